package decide

import "testing"

func TestWhatPanicsBesidePanicsInTheCaller(t *testing.T) {
	wait := beside(func() int { panic("here") })
	defer func() {
		if got := recover(); got != "here" {
			t.Errorf("the caller meets %v", got)
		}
	}()
	t.Errorf("%d came of it", wait())
}

func TestWhatIsWorkedOutBesideIsHandedOver(t *testing.T) {
	if got := beside(func() int { return 7 })(); got != 7 {
		t.Errorf("%d", got)
	}
}
