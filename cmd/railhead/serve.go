package main

import (
	"context"
	"log/slog"
	"net"
	"net/http"
	"os/signal"
	"syscall"
	"time"

	"railhead/internal/config"
	"railhead/internal/httpapi"
	"railhead/internal/telemetry"
)

// serve runs the service until it is told to end (SIGTERM or SIGINT), and lets
// requests under way finish. A second signal ends it at once.
func (p program) serve(ctx context.Context, _ []string) int {
	settings, err := config.Read(p.getenv)
	if err != nil {
		return p.fail(err)
	}
	ctx, stop := signal.NotifyContext(ctx, syscall.SIGTERM, syscall.SIGINT)
	defer stop()
	context.AfterFunc(ctx, stop)

	log := telemetry.NewLog(p.stdout, settings.LogLevel)
	tracing, err := telemetry.StartTracing(ctx, p.getenv, programVersion(), log)
	if err != nil {
		return p.fail(err)
	}
	metrics, health := telemetry.NewMetrics(programVersion()), &telemetry.Health{}
	service, err := httpapi.New(httpapi.Options{
		Core: p.core, MaxBody: settings.MaxBody, Timeout: settings.RequestTimeout, Log: log, Observe: metrics.Observe,
	})
	if err != nil {
		return p.fail(err)
	}
	public := publicServer(settings, tracing.Handler(service.Handler()), log)
	admin := adminServer(telemetry.Admin(health, metrics), log)
	h := house{settings: settings, log: log, health: health, public: public, admin: admin, tracing: tracing}
	if err := h.open(ctx); err != nil {
		return p.fail(err)
	}
	if p.listening != nil {
		p.listening(h.publicAt.Addr(), h.adminAt.Addr())
	}
	if err := h.live(ctx); err != nil {
		log.Error("the service ended badly", "cause", err)
		return exitFailed
	}
	log.Info("the service has ended")
	return exitDone
}

func publicServer(c config.Config, h http.Handler, log *slog.Logger) *http.Server {
	return &http.Server{
		Handler: h, ReadHeaderTimeout: c.HeaderTimeout, ReadTimeout: c.ReadTimeout, WriteTimeout: c.WriteTimeout, IdleTimeout: c.IdleTimeout,
		MaxHeaderBytes: 32 << 10, ErrorLog: slog.NewLogLogger(log.Handler(), slog.LevelWarn),
	}
}

func adminServer(h http.Handler, log *slog.Logger) *http.Server {
	const short = 5 * time.Second
	return &http.Server{
		Handler: h, ReadHeaderTimeout: short, ReadTimeout: short, WriteTimeout: 2 * short, IdleTimeout: 12 * short,
		MaxHeaderBytes: 32 << 10, ErrorLog: slog.NewLogLogger(log.Handler(), slog.LevelWarn),
	}
}

// house is the two listeners and what they serve.
type house struct {
	settings          config.Config
	log               *slog.Logger
	health            *telemetry.Health
	public, admin     *http.Server
	publicAt, adminAt net.Listener
	tracing           *telemetry.Tracing
}

func (h *house) open(ctx context.Context) (err error) {
	var listen net.ListenConfig
	if h.publicAt, err = listen.Listen(ctx, "tcp", h.settings.Addr); err != nil {
		return err
	}
	if h.adminAt, err = listen.Listen(ctx, "tcp", h.settings.AdminAddr); err != nil {
		_ = h.publicAt.Close() // the error that counts is the other one
		return err
	}
	h.log.Info("listening", "public", h.publicAt.Addr().String(), "admin", h.adminAt.Addr().String(), "version", programVersion())
	return nil
}

// live serves until the context ends or a listener fails, then drains.
func (h *house) live(ctx context.Context) error {
	failed := make(chan error, 2)
	go func() { failed <- h.public.Serve(h.publicAt) }()
	go func() { failed <- h.admin.Serve(h.adminAt) }()
	h.health.SetReady(true)
	var cause error
	select {
	case cause = <-failed:
	case <-ctx.Done():
	}
	if err := h.drain(ctx); cause == nil {
		cause = err
	}
	return cause
}

// drain takes no new requests and lets those under way finish, within the time there is.
func (h *house) drain(ctx context.Context) error {
	h.health.SetReady(false)
	h.log.Info("draining", "up_to", h.settings.Drain.String())
	ctx = context.WithoutCancel(ctx) // it has ended: that is why
	most, cancel := context.WithTimeout(ctx, h.settings.Drain)
	defer cancel()
	err := h.public.Shutdown(most)
	if err != nil {
		_ = h.public.Close() // time is up: what is still under way is cut off
	}
	last, cancelLast := context.WithTimeout(ctx, 5*time.Second)
	defer cancelLast()
	if stopErr := h.tracing.Stop(last); stopErr != nil {
		h.log.Warn("the last traces could not be sent", "cause", stopErr)
	}
	_ = h.admin.Close() // last of all, so that health can be asked for to the end
	return err
}
