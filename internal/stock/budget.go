package stock

// budget counts elementary steps, so that the same problem ends at the same place on every machine.
type budget struct{ left int64 }

// spend takes n steps off and says whether any are left.
func (b *budget) spend(n int) bool {
	b.left -= int64(n)
	return b.left > 0
}

func (b *budget) spent() bool { return b.left <= 0 }

// effort is how hard to try.
type effort struct {
	steps int64 // of the whole search
	whole int   // table entries up to which a whole problem is solved by the exact table
	rest  int   // the same for what a branch leaves over
	rows  int   // kinds up to which the linear program is worth its steps
}

// usual is the effort of Cut: about half a second at the worst.
func usual() effort {
	return effort{steps: 300_000_000, whole: 5_000_000, rest: 10_000, rows: 250}
}
