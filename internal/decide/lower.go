package decide

import "railhead/internal/length"

// Lower is lowering every row on its legs.
type Lower struct {
	By       length.Length
	Possible bool
	Gates    []string // what limits it, by code
	Spares   []string // overhead groups that need no cut then
}
