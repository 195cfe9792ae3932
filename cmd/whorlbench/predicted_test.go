package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestPredicted holds check --json against patterns whose closing, seams and
// petals were worked out on paper; each pattern's comments say how. A
// prediction names the keys it speaks of and leaves others out.
func TestPredicted(t *testing.T) {
	files, err := filepath.Glob("../../testdata/predicted/*.toml")
	if err != nil {
		t.Fatal(err)
	}
	if len(files) < 10 {
		t.Fatalf("%d predicted patterns, want at least 10", len(files))
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".toml"), func(t *testing.T) {
			var out, errs bytes.Buffer
			if status := run(context.Background(), []string{"check", "--json", file}, nil, &out, &errs); status != fine {
				t.Fatalf("status %d, %s", status, errs.String())
			}
			predicted, err := os.ReadFile(strings.TrimSuffix(file, ".toml") + ".json")
			if err != nil {
				t.Fatal(err)
			}
			var got, want any
			if err := json.Unmarshal(out.Bytes(), &got); err != nil {
				t.Fatal(err)
			}
			if err := json.Unmarshal(predicted, &want); err != nil {
				t.Fatal(err)
			}
			for _, d := range differences("", got, want) {
				t.Error(d)
			}
		})
	}
}

// TestPredictedNumbersDiffer holds the comparison to what it is meant to find.
func TestPredictedNumbersDiffer(t *testing.T) {
	for _, tt := range []struct {
		got, want string
		same      bool
	}{
		{`{"a":1,"b":[1.000001]}`, `{"b":[1]}`, true},
		{`{"a":1}`, `{"a":1.000003}`, false},
		{`{"a":1}`, `{"b":1}`, false},
		{`{"a":null}`, `{"a":0}`, false},
		{`{"a":0}`, `{"a":null}`, false},
		{`{"a":[1,2]}`, `{"a":[1]}`, false},
		{`{"a":"kink"}`, `{"a":"stop"}`, false},
		{`{"a":true}`, `{"a":false}`, false},
	} {
		var got, want any
		if err := json.Unmarshal([]byte(tt.got), &got); err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal([]byte(tt.want), &want); err != nil {
			t.Fatal(err)
		}
		if d := differences("", got, want); (len(d) == 0) != tt.same {
			t.Errorf("differences(%s, %s) = %q, want same %v", tt.got, tt.want, d, tt.same)
		}
	}
}

// differences lists where got departs from want by more than one in the sixth
// decimal, or lacks something that want has.
func differences(path string, got, want any) []string {
	differ := []string{fmt.Sprintf("%s = %v, want %v", path, got, want)}
	switch want := want.(type) {
	case map[string]any:
		got, ok := got.(map[string]any)
		if !ok {
			return differ
		}
		var all []string
		for key, w := range want {
			g, ok := got[key]
			if !ok {
				all = append(all, path+"."+key+" is not there")
				continue
			}
			all = append(all, differences(path+"."+key, g, w)...)
		}
		return all
	case []any:
		got, ok := got.([]any)
		if !ok || len(got) != len(want) {
			return differ
		}
		var all []string
		for i := range want {
			all = append(all, differences(fmt.Sprintf("%s[%d]", path, i), got[i], want[i])...)
		}
		return all
	case float64:
		const lastPlace = 1e-6
		if g, ok := got.(float64); ok && math.Abs(g-want) <= 1.01*lastPlace {
			return nil
		}
		return differ
	}
	if got == want {
		return nil
	}
	return differ
}
