package decode

import (
	"bytes"

	"github.com/go-json-experiment/json/jsontext"
	"pgregory.net/rapid"
)

// tree is a body that can be spoilt: members keep their order and may repeat.
type tree struct {
	open  byte   // { or [, or 0
	text  string // of a scalar, as written
	names []string
	below []*tree
}

func parseTree(t interface{ Fatal(...any) }, data []byte) *tree {
	dec := jsontext.NewDecoder(bytes.NewReader(data))
	root, err := readTree(dec)
	if err != nil {
		t.Fatal(err)
	}
	return root
}

func readTree(dec *jsontext.Decoder) (*tree, error) {
	kind := dec.PeekKind()
	if kind != '{' && kind != '[' {
		value, err := dec.ReadValue()
		return &tree{text: string(value)}, err
	}
	n := &tree{open: byte(kind)}
	if _, err := dec.ReadToken(); err != nil {
		return nil, err
	}
	for dec.PeekKind() != kind+2 { // } is two after {, ] is two after [
		if kind == '{' {
			name, err := dec.ReadValue()
			if err != nil {
				return nil, err
			}
			n.names = append(n.names, string(name))
		}
		child, err := readTree(dec)
		if err != nil {
			return nil, err
		}
		n.below = append(n.below, child)
	}
	_, err := dec.ReadToken()
	return n, err
}

func (n *tree) write(b *bytes.Buffer) {
	if n.open == 0 {
		b.WriteString(n.text)
		return
	}
	b.WriteByte(n.open)
	for i, child := range n.below {
		if i > 0 {
			b.WriteByte(',')
		}
		if n.open == '{' {
			b.WriteString(n.names[i] + ":")
		}
		child.write(b)
	}
	b.WriteByte(n.open + 2)
}

func (n *tree) bytes() []byte {
	var b bytes.Buffer
	n.write(&b)
	return b.Bytes()
}

// all lists the node and everything below it.
func (n *tree) all() []*tree {
	nodes := []*tree{n}
	for _, child := range n.below {
		nodes = append(nodes, child.all()...)
	}
	return nodes
}

var spoiling = []string{
	`null`, `""`, `"null"`, `0`, `-0`, `0.0`, `1.0`, `1968.0`, `1.968e3`, `2200.5`, `1e999`, `-1e999`, `1e-999`, `1e999999999999`, `123456789012345678901234567890`,
	`true`, `false`, `{}`, `[]`, `[1]`, `["mm"]`, `{"at":1}`, `"mm"`, `"MM"`, `"x y"`, `"a/b~c"`, `"12.5 mm"`, `"12.5"`, `"1/3 in"`, `"2' 7 5/8\""`, `"31⅝″"`, `"0.40"`, `"1e3"`,
	`"\ud800"`, `"\ud83d\ude00"`, `"ends in a quote\""`, `"\\"`, `{"down":1}`, `{"up":1,"height":2}`, `{"option":"trim"}`, `{"likely":1}`, `"trim"`, `"demo-rail"`, "\"\xff\"", `1.`, `01`,
}

var namesToTry = []string{`"at"`, `"At"`, `"tape"`, `"colour"`, `""`, `"a.b"`, `"a b"`, `"empty"`, `"\u0061t"`, `"units"`, "\"\xff\"", `"up"`, `"id"`}

// spoil makes one change somewhere in a body; some changes leave it good.
func spoil(t *rapid.T, root *tree) {
	nodes := root.all()
	n := nodes[rapid.IntRange(0, len(nodes)-1).Draw(t, "node")]
	at := 0
	if len(n.below) > 0 {
		at = rapid.IntRange(0, len(n.below)-1).Draw(t, "child")
	}
	switch how := rapid.IntRange(0, 6).Draw(t, "how"); {
	case how <= 2 || len(n.below) == 0:
		*n = tree{text: rapid.SampledFrom(spoiling).Draw(t, "value")}
	case how == 3: // leave one out
		n.below = append(n.below[:at:at], n.below[at+1:]...)
		if n.open == '{' {
			n.names = append(n.names[:at:at], n.names[at+1:]...)
		}
	case how == 4: // repeat one
		n.below = append(n.below, n.below[at])
		if n.open == '{' {
			n.names = append(n.names, n.names[at])
		}
	case how == 5 && n.open == '{': // add one
		n.names = append(n.names, rapid.SampledFrom(namesToTry).Draw(t, "name"))
		n.below = append(n.below, &tree{text: rapid.SampledFrom(spoiling).Draw(t, "value")})
	case n.open == '{': // rename one
		n.names[at] = rapid.SampledFrom(namesToTry).Draw(t, "name")
	}
}

// spoilt draws a body with a few changes.
func spoilt(t *rapid.T, full []byte) []byte {
	root := parseTree(t, full)
	for range rapid.IntRange(1, 3).Draw(t, "changes") {
		spoil(t, root)
	}
	return root.bytes()
}
