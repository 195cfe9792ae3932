package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"whorlbench/sandbox/capture"
)

// endings are those of the files that are made, with the format that each stands
// for where none is named.
var endings = []struct{ ext, format string }{
	{".gif", "gif"}, {".png", "png"}, {".apng", "apng"}, {".svg", "svg"}, {".zip", "frames"}, {".webm", "webm"}, {".mp4", "mp4"}, {".html", cardFormat},
}

// endingsOf returns how a file of a format may end, nothing if there is no such
// format.
func endingsOf(format string) []string {
	if v, ok := videos[format]; ok {
		return []string{v.ext}
	}
	if format == cardFormat {
		return []string{".html"}
	}
	f, ok := capture.Named(format)
	switch {
	case !ok:
		return nil
	case f == capture.APNG:
		return []string{f.Ext(), ".apng"}
	}
	return []string{f.Ext()}
}

// byEnding takes the format from the name of the file that is asked for where
// none is named, and returns what is wrong with the name: that it says another
// format, or is one for several files.
func (req *request) byEnding(flags *flag.FlagSet, files int) (wrong []string) {
	ext := strings.ToLower(filepath.Ext(req.out))
	if info, err := os.Stat(req.out); ext == "" || req.out == "-" || os.IsPathSeparator(req.out[len(req.out)-1]) || err == nil && info.IsDir() {
		return nil
	}
	known := slices.IndexFunc(endings, func(e struct{ ext, format string }) bool { return e.ext == ext })
	named := false
	flags.Visit(func(f *flag.Flag) { named = named || f.Name == "format" })
	switch allowed := endingsOf(req.format); {
	case known >= 0 && files > 1:
		return []string{fmt.Sprintf(say.Render.OneName, req.out, files, strings.TrimSuffix(req.out, filepath.Ext(req.out)))}
	case files > 1:
		return nil
	case !named && known < 0:
		var all []string
		for _, e := range endings {
			all = append(all, e.ext)
		}
		return []string{fmt.Sprintf(say.Render.Ending, req.out, strings.Join(all, ", "))}
	case !named:
		req.format = endings[known].format
	case known >= 0 && len(allowed) > 0 && !slices.Contains(allowed, ext):
		return []string{fmt.Sprintf(say.Render.EndingOf, req.out, req.format, strings.Join(allowed, ", "))}
	}
	return nil
}
