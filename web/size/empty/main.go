//go:build js

// Command empty is the least program that Ebitengine runs: what the size of
// the bench is measured against.
package main

import (
	"log"

	"github.com/hajimehoshi/ebiten/v2"
)

type empty struct{}

func (empty) Update() error                       { return nil }
func (empty) Draw(*ebiten.Image)                  {}
func (empty) Layout(width, height int) (w, h int) { return width, height }

func main() {
	if err := ebiten.RunGame(empty{}); err != nil {
		log.Fatal(err)
	}
}
