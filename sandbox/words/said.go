package words

import (
	"encoding/json"
	"fmt"
)

// Said is the table in use. It is chosen once, before anything is said.
var Said = &English

// SaidCommand are the command line's words in use, likewise.
var SaidCommand = &EnglishCommand

// Use lets everything be said as a table has it.
func Use(t *Table) { Said = t }

// Read returns the table that JSON holds, as web/build writes it.
func Read(data []byte) (*Table, error) {
	var t Table
	if err := json.Unmarshal(data, &t); err != nil {
		return nil, fmt.Errorf("failed to read the words: %w", err)
	}
	return &t, nil
}
