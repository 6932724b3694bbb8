package mip

import (
	"fmt"
	"strings"
)

// Model is a program that looks for the most. All its numbers are whole.
type Model struct {
	Name  string
	costs []int64
	kinds []kind
	rows  []string
}

// Var is a variable of a model.
type Var int

type kind byte

const (
	binary kind = iota
	integer
	continuous
)

// Binary adds a variable that is 0 or 1.
func (m *Model) Binary(gain int64) Var { return m.add(binary, gain) }

// Integer adds a variable that is a whole number from 0 on.
func (m *Model) Integer(gain int64) Var { return m.add(integer, gain) }

// Number adds a variable that is any number from 0 on.
func (m *Model) Number(gain int64) Var { return m.add(continuous, gain) }

func (m *Model) add(k kind, gain int64) Var {
	m.costs, m.kinds = append(m.costs, gain), append(m.kinds, k)
	return Var(len(m.costs) - 1)
}

// Sum is a constant and variables so many times.
type Sum struct {
	Constant int64
	terms    []term
}

type term struct {
	times int64
	of    Var
}

// Plus adds a variable so many times.
func (s *Sum) Plus(times int64, of ...Var) *Sum {
	for _, v := range of {
		s.terms = append(s.terms, term{times, v})
	}
	return s
}

// Add adds another sum so many times.
func (s *Sum) Add(times int64, other *Sum) *Sum {
	s.Constant += times * other.Constant
	for _, t := range other.terms {
		s.terms = append(s.terms, term{times * t.times, t.of})
	}
	return s
}

// AtMost, AtLeast and Equals ask a sum to be so.
func (m *Model) AtMost(s *Sum, most int64)   { m.row(s, "<=", most) }
func (m *Model) AtLeast(s *Sum, least int64) { m.row(s, ">=", least) }
func (m *Model) Equals(s *Sum, value int64)  { m.row(s, "=", value) }

// row writes one row. A row without variables that does not hold is written with one that is always 0.
func (m *Model) row(s *Sum, relation string, value int64) {
	value -= s.Constant
	var b strings.Builder
	m.write(&b, s.merged())
	if b.Len() == 0 {
		if holds(relation, value) {
			return
		}
		none := m.Binary(0)
		m.AtMost(new(Sum).Plus(1, none), 0)
		m.write(&b, []term{{1, none}})
	}
	fmt.Fprintf(&b, " %s %d", relation, value)
	m.rows = append(m.rows, b.String())
}

func holds(relation string, value int64) bool {
	switch relation {
	case "<=":
		return value >= 0
	case ">=":
		return value <= 0
	}
	return value == 0
}

// merged is the terms with each variable once, in the order of their first mention.
func (s *Sum) merged() []term {
	at := map[Var]int{}
	var out []term
	for _, t := range s.terms {
		i, ok := at[t.of]
		if !ok {
			at[t.of] = len(out)
			out = append(out, t)
			continue
		}
		out[i].times += t.times
	}
	return out
}

// write writes terms, a few to a line: readers bear only lines of some hundred characters.
func (m *Model) write(b *strings.Builder, terms []term) {
	for i, t := range terms {
		if t.times == 0 {
			continue
		}
		if i > 0 && i%10 == 0 {
			b.WriteString("\n ")
		}
		fmt.Fprintf(b, " %+d x%d", t.times, t.of)
	}
}

// LP is the model as text.
func (m *Model) LP() string {
	var b strings.Builder
	b.WriteString("Max\n obj:")
	var goal Sum
	for v, gain := range m.costs {
		goal.Plus(gain, Var(v))
	}
	m.write(&b, goal.terms)
	b.WriteString("\nSubject To\n")
	for i, row := range m.rows {
		fmt.Fprintf(&b, " r%d:%s\n", i, row)
	}
	m.section(&b, "Binary", binary)
	m.section(&b, "General", integer)
	b.WriteString("End\n")
	return b.String()
}

func (m *Model) section(b *strings.Builder, title string, of kind) {
	b.WriteString(title + "\n")
	for v, k := range m.kinds {
		if k == of {
			fmt.Fprintf(b, " x%d\n", v)
		}
	}
}
