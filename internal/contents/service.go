package contents

import (
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// seenState is the state that what was seen makes by itself, with the evidence
// for it; Empty where nothing was.
func (c Cluster) seenState() (State, []string) {
	var by [States][]string
	for _, o := range c.Parts {
		for i := range o.Inside.Services {
			v := &o.Inside.Services[i]
			s := stateOf(v)
			by[s] = append(by[s], v.Pointer)
		}
	}
	if wires := money.Quantity(len(by[FewWires])) * money.One; wires >= c.figures.Of(kitchen.WiresAreMany) {
		by[ManyWires] = by[FewWires]
	}
	for s := States - 1; s > Empty; s-- {
		if len(by[s]) > 0 {
			return s, by[s]
		}
	}
	return Empty, nil
}

// stateOf is what one service makes by itself. Gas and sprinkler lines count as
// what must not be moved: no price puts them elsewhere without the licensed trade.
func stateOf(v *survey.Service) State {
	switch {
	case v.Movable == survey.NotMovable:
		return Immovable
	case v.Kind == survey.Gas || v.Kind == survey.Sprinkler || v.Kind == survey.StructureInside:
		return Immovable
	case v.Kind == survey.Wire || v.Kind == survey.Cable:
		return FewWires
	default:
		return PipeOrDuct
	}
}
