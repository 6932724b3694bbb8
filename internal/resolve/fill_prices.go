package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
)

// fillPrices reads what cabinets of some sizes cost and are preferred by. No two prices are for the same cabinet.
func (b *body) fillPrices() {
	for i := range b.fill.Prices {
		pointer := item("/fill", "prices", i)
		price, ok := b.fillPrice(&b.fill.Prices[i], pointer)
		if !ok {
			continue
		}
		if slices.ContainsFunc(b.filling.Sizes, func(other kitchen.SizePrice) bool { return sameSize(other, price) }) {
			b.fault("fill.price.twice", pointer)
		}
		b.filling.Sizes = append(b.filling.Sizes, price)
	}
}

// sameSize reports whether two prices are for the same cabinets, or for some that are the same.
func sameSize(x, y kitchen.SizePrice) bool {
	heights := x.Height == y.Height || x.Height == 0 || y.Height == 0
	return x.Kind == y.Kind && x.Width == y.Width && heights
}

// fillPrice reads the price of a size; false where the size is refused.
func (b *body) fillPrice(in *api.SizePrice, pointer string) (out kitchen.SizePrice, ok bool) {
	kind, kindOK := b.kind(in.Kind, pointer+"/kind")
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	height, heightOK := b.optional(in.Height, pointer+"/height", positive)
	heightOK = heightOK || !in.Height.Given()
	out = kitchen.SizePrice{Kind: kind, Width: width, Height: height}
	if price, given := b.money(in.Price, pointer+"/price"); given {
		out.Price = &price
	}
	out.Prefer, _ = b.money(in.Prefer, pointer+"/prefer")
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
	corner := func(c cabinet.CornerSize) bool { return c.Width == p.Width || c.OtherWidth == p.Width }
	if widthOK && !slices.Contains(sizes.Widths, p.Width) && !slices.ContainsFunc(sizes.Corners, corner) {
		b.fault("fill.price.off_list", pointer+"/width")
	}
	if heightOK && p.Height > 0 && !slices.Contains(sizes.Heights, p.Height) {
		b.fault("fill.price.off_list", pointer+"/height")
	}
	if !b.filling.Asks(p.Kind) {
		b.idle(pointer)
	}
}
