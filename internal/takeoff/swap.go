package takeoff

import "railhead/internal/cabinet"

// appendSwap adds what exchanging a planned cabinet for another height takes: its
// order changed, and the front that it has more or less.
func appendSwap(out []Item, w cabinet.Swap, bare bool) []Item {
	front := account{bare: bare}
	width := front.length("width", w.Cabinet.Width())
	now, before := front.length("new_height", w.Height), front.length("height", w.Cabinet.Height)
	if w.Height > w.Cabinet.Height {
		front.add(times(width, minus(now, before)))
		out = appendItem(out, &front, TallerFront, w.Cabinet.Pointer)
	} else {
		front.add(times(width, minus(before, now)))
		out = appendItem(out, &front, ShorterFront, w.Cabinet.Pointer)
	}
	return append(out, pieces(ExchangeOrder, w.Cabinet.Pointer, 1, bare))
}
