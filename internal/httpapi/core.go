package httpapi

import (
	"context"

	"railhead/api"
	"railhead/internal/assess"
)

// Core is what the HTTP layer asks of the trade core.
type Core struct {
	// Assess answers a request, or says everything that is wrong with it.
	Assess func(ctx context.Context, req *api.Request, parts assess.Part) (*api.Assessment, []api.Fault)
	// Check says what is wrong with a request without answering it.
	Check func(ctx context.Context, req *api.Request) []api.Fault
	// Layouts proposes cabinets for the walls of a room, or says everything that is wrong with what was sent.
	Layouts func(ctx context.Context, req *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault)
	// CheckLayouts says what is wrong with it without proposing anything.
	CheckLayouts func(ctx context.Context, req *api.LayoutRequest) []api.Fault
	// Systems lists the built-in systems.
	Systems func() api.SystemList
	// System is one of them.
	System func(id string) (api.SystemDetail, bool)
}
