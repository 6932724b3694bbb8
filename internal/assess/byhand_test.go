package assess

import (
	"slices"
	"testing"

	"railhead/api"
	"railhead/internal/estimate"
)

// One soffit of 1.2 m, 330 mm deep and 400 mm high, that was opened and is empty, hangs
// 20 mm lower than a wall cabinet of 600 mm ends. Every rate is a single amount, and all
// but these are nothing, so that all of it can be reckoned with a pencil:
//
//	helper 40/h, drywaller 50/h, carpenter 60/h, painter 50/h
//	board off 0.25 h/m2, cut 0.2 h/m, frame refitted 0.5 h/m and 4/m, frame off 0.05 h/m,
//	paint 0.2 h/m2, filler 20/m
//	setting up 75, the drywaller comes for 30, the painter for 40, the carpenter for no
//	less than 20; going up to the ceiling is worth 50
//
// Trimming cuts to 2122 mm, 22 mm up, over the cabinet and 3 mm beside it:
//
//	board off   0.603·0.330 + 0.603·0.022 = 0.212 m2, 0.053 h at 40       2.12
//	cut         0.330 + 0.022 + 0.603     = 0.955 m,  0.191 h at 50       9.55
//	frame       0.603 m: 0.302 h at 60                                   18.12
//	            0.603 m at 4                                              2.412
//	by itself                                                            32.202
//	shared      setting up 75, drywaller 30, carpenter 20 - 18.12        106.88
//	in all                                                              139.082
//
// Taken down for the taller row:
//
//	board off   1.2·0.330 + 1.2·0.400 = 0.876 m2, 0.219 h at 40           8.76
//	frame off   three members of 1.2 and four of 0.730 = 6.520 m, 0.326 h at 60  19.56
//	paint       1.2·0.300 + 0.6·(0.330 + 0.400) + 0.330·0.400 = 0.930 m2, 0.186 h at 50  9.30
//	filler      0.6 m at 20                                              12.00
//	by itself                                                            49.62
//	shared      setting up 75, drywaller 30, painter 40, carpenter 20 - 19.56  145.44
//	in all                                                              195.06
//
// So trimming nets -139.08, and the taller row 50 - 195.06 = -145.06, 5.98 less; it is
// advised once going up to the ceiling is worth more than 195.06 - 139.082 = 55.978.
func byHand(t tester) string {
	t.Helper()
	rates := map[string]any{}
	for _, code := range estimate.Codes() {
		rates[code] = "0"
	}
	for code, rate := range map[string]string{
		"wage.helper": "40", "wage.drywaller": "50", "wage.carpenter": "60", "wage.painter": "50",
		"hours.board_off": "0.25", "hours.cut": "0.2", "hours.frame_refit": "0.5", "hours.frame_off": "0.05", "hours.paint": "0.2",
		"material.frame_refit": "4", "material.filler": "20",
		"setup.site": "75", "call_out.drywaller": "30", "call_out.painter": "40", "minimum.carpenter": "20",
	} {
		rates[code] = rate
	}
	delete(rates, "material.probe") // given by names of their own
	delete(rates, "material.remeasure")
	return bare(t, map[string]any{
		"/money/rates": rates, "/money/to_ceiling_worth": "50", s0 + "/inside": map[string]any{"looked": "opened"},
		s0 + "/underside": []any{map[string]any{"at": 0, "height": 2100}},
		s0 + "/make":      map[string]any{"lining": 12.5, "bottom_member": 38, "spacing": 400, "hung_from": "joists"},
	})
}

// row is what a line is worth telling of: its code and quantity, and what it comes to.
type row struct{ code, quantity, unit, amount string }

func rowsOf(lines []api.CostLine) []row {
	var out []row
	for _, l := range lines {
		if l.Mean != "0.00" {
			out = append(out, row{l.Code, l.Quantity, l.Unit, l.Mean})
		}
	}
	return out
}

func TestOneRoomByHand(t *testing.T) {
	a := assessed(t, byHand(t), All)
	room := a.Decisions.Room
	for name, want := range map[string][]row{
		"trim":          {{"work.board_off", "0.053", "h", "2.12"}, {"work.cut", "0.191", "h", "9.55"}, {"work.frame_refit", "0.302", "h", "18.12"}, {"work.frame_refit", "0.603", "m", "2.41"}},
		"remove_taller": {{"work.board_off", "0.219", "h", "8.76"}, {"work.frame_off", "0.326", "h", "19.56"}, {"work.paint", "0.186", "h", "9.30"}, {"work.filler", "0.6", "m", "12.00"}},
	} {
		for _, o := range a.Decisions.Overheads[0].Options {
			if o.Option == name && !slices.Equal(rowsOf(o.Lines), want) {
				t.Errorf("%s: %v, want %v", name, rowsOf(o.Lines), want)
			}
		}
	}
	for what, pair := range map[string][2]string{
		"advice":           {room.Advice["s"], "trim"},
		"expected cost":    {room.ExpectedCost, "139.08"},
		"gain":             {room.Gain, "0.00"},
		"net":              {room.Net, "-139.08"},
		"runner-up":        {room.RunnerUp.Advice["s"], "remove_taller"},
		"its cost":         {room.RunnerUp.ExpectedCost, "195.06"},
		"its net":          {room.RunnerUp.Net, "-145.06"},
		"worse by":         {room.RunnerUp.WorseBy, "5.98"},
		"the estimate":     {a.Estimate.Total.Mean, "139.08"},
		"at the least":     {a.Estimate.Total.Low, "139.08"},
		"at the most":      {a.Estimate.Total.High, "139.08"},
		"nothing in doubt": {a.Estimate.Total.SD, "0.00"},
	} {
		sameAmount(t, what, pair[0], pair[1])
	}
	shared := map[string][2]string{"site": {"75.00", "0.00"}, "drywaller": {"30.00", "0.00"}, "carpenter": {"0.00", "1.88"}}
	for _, s := range room.Shared {
		if want, ok := shared[s.Trade]; !ok || s.CallOut != want[0] || s.TopUp != want[1] || s.Chance != "1" {
			t.Errorf("%+v", s)
		}
	}
	if len(room.Shared) != len(shared) {
		t.Errorf("shared %+v", room.Shared)
	}
	at := slices.IndexFunc(room.Flips, func(f api.Flip) bool { return f.Pointer == "/money/to_ceiling_worth" })
	if at < 0 || room.Flips[at].At != "55.9781" || room.Flips[at].To != "remove_taller" {
		t.Errorf("%+v", room.Flips)
	}
}
