package combine

// label is a choice of ways for the things taken so far.
type label struct {
	worth       int64 // less what it pays for good
	most        int64 // that it may still come to
	line        line
	path        bool  // it is the pick that the answer must differ from
	parent, way int32 // the node it goes on from, and the way it goes on with
	state       int   // where its state starts
}

// crop is the labels of a stage. The state of a label is, for each trade, the
// chance left that nobody called it and the labour so far, and then the state of
// each joint's slot.
type crop struct {
	labels []label
	states []int64
}

func (c *crop) state(l *label, stride int) []int64 { return c.states[l.state : l.state+stride] }

// node is a label that was gone on from.
type node struct{ parent, way int32 }
