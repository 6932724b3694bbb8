package estimate

// Trade is who does the work.
type Trade int

// Trades.
const (
	NoTrade Trade = iota // what is bought
	Helper               // strips out, carries, protects
	Carpenter
	Drywaller
	Painter
	Electrician
	Plumber
	DuctFitter
	Fitter // of the cabinets
	WasteHaul
	Site // setting up and protecting
	Trades
)

// String is the trade's name on the wire.
func (t Trade) String() string {
	return [...]string{
		"none", "helper", "carpenter", "drywaller", "painter", "electrician", "plumber", "duct_fitter", "cabinet_fitter", "waste", "site",
	}[t]
}
