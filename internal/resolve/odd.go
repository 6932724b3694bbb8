package resolve

// oddities mentions what is possible but unusual.
func (b *body) oddities() {
}
