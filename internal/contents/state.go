package contents

// State is what an overhead turns out to hold.
type State int

// States, from the least trouble to the most.
const (
	Empty State = iota
	FewWires
	ManyWires
	PipeOrDuct
	Immovable // something that cannot be moved, or must not be
	States    // how many there are
)

// String is the state's name on the wire.
func (s State) String() string {
	return [...]string{"empty", "few_wires", "many_wires", "pipe_or_duct", "immovable"}[s]
}
