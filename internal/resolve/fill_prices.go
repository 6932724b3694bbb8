package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// fillPrices reads what cabinets of some sizes cost and are preferred by.
func (b *body) fillPrices() {
	type place struct {
		kind          cabinet.Kind
		width, height length.Length
	}
	seen := map[place]bool{}
	for i := range b.fill.Prices {
		pointer := item("/fill", "prices", i)
		price, ok := b.fillPrice(&b.fill.Prices[i], pointer)
		size := place{price.Kind, price.Width, price.Height}
		if ok && seen[size] {
			b.fault("fill.price.twice", pointer)
		}
		seen[size] = seen[size] || ok
		b.filling.Sizes = append(b.filling.Sizes, price)
	}
}

// fillPrice reads the price of a size; false where the size is refused.
func (b *body) fillPrice(in *api.SizePrice, pointer string) (out kitchen.SizePrice, ok bool) {
	kind, kindOK := b.kind(in.Kind, pointer+"/kind")
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	height, heightOK := b.optional(in.Height, pointer+"/height", positive)
	out = kitchen.SizePrice{Kind: kind, Width: width, Height: height}
	if price, given := b.money(in.Price, pointer+"/price"); given {
		out.Price = &price
	}
	out.Prefer, _ = b.money(in.Prefer, pointer+"/prefer")
	heightOK = heightOK || !in.Height.Given()
	if kindOK {
		b.priceOnList(&out, pointer, widthOK, heightOK)
	}
	return out, kindOK && widthOK && heightOK
}

// priceOnList refuses a size that the system does not make, at the member that it does not make.
func (b *body) priceOnList(p *kitchen.SizePrice, pointer string, widthOK, heightOK bool) {
	if b.made.none[p.Kind] {
		b.fault("fill.price.off_list", pointer+"/kind")
		return
	}
	if b.system == nil {
		return
	}
	sizes := b.system.Sizes(p.Kind)
	if widthOK && !slices.Contains(sizes.Widths, p.Width) {
		b.fault("fill.price.off_list", pointer+"/width")
	}
	if heightOK && p.Height > 0 && !slices.Contains(sizes.Heights, p.Height) {
		b.fault("fill.price.off_list", pointer+"/height")
	}
	if !b.filling.Asks(p.Kind) {
		b.without("layouts", "not_assessed.not_filled", pointer)
	}
}
