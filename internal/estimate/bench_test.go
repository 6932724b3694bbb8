package estimate

import (
	"testing"

	"railhead/internal/contents"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// removal is the work of taking a soffit down and making good.
func removal() []takeoff.Item {
	var items []takeoff.Item
	for _, w := range []takeoff.Work{
		takeoff.BoardOff, takeoff.FrameOff, takeoff.Waste, takeoff.WasteMass, takeoff.Patch, takeoff.Paint, takeoff.BackingBoard,
		takeoff.Filler, takeoff.TallerFront, takeoff.ExchangeOrder,
	} {
		items = append(items, takeoff.Item{Work: w, Quantity: 3600, Inputs: []takeoff.Input{{Name: "length", Value: "3.6", Unit: "m"}}})
	}
	return items
}

func BenchmarkPrice(b *testing.B) {
	book, items := euros(), removal()
	b.ReportAllocs()
	for b.Loop() {
		book.Price("s", items)
	}
}

func BenchmarkSum(b *testing.B) {
	book, items := euros(), removal()
	b.ReportAllocs()
	for b.Loop() {
		book.Sum(items)
	}
}

func BenchmarkOneRateChanged(b *testing.B) {
	book := euros()
	bill := book.Bill(removal())
	b.ReportAllocs()
	for b.Loop() {
		bill.SumWith(book.With("wage.painter", known(50*money.Unit)), "wage.painter")
	}
}

func BenchmarkCostOfAnOption(b *testing.B) {
	lines := euros().Price("s", removal())
	b.ReportAllocs()
	for b.Loop() {
		CostOf(lines)
	}
}

func BenchmarkTotalOfARoom(b *testing.B) {
	book := euros()
	var lines []Line
	for _, group := range []string{"a", "b", "c", "d", "e", "f", "g", "h"} {
		lines = append(lines, book.Price(group, removal())...)
		for s := contents.FewWires; s < contents.States; s++ {
			lines = append(lines, book.PriceAt(group, []takeoff.Item{{Work: takeoff.RerouteWire, Quantity: 2000}}, Event{State: s, Chance: percent(10)})...)
		}
	}
	lines = append(lines, book.Shared(callFor(lines, Drywaller, Painter, Electrician), lines)...)
	b.ReportAllocs()
	for b.Loop() {
		TotalOf(lines)
	}
}
