# The service in an image of nothing but itself: one static program, no shell,
# no other user than nobody in particular.
FROM golang:1.26 AS build
WORKDIR /src
COPY go.mod go.sum ./
RUN go mod download
COPY . .
ARG VERSION=""
RUN CGO_ENABLED=0 go build -trimpath -ldflags "-s -w -X main.version=${VERSION}" -o /railhead ./cmd/railhead

FROM scratch
COPY --from=build /railhead /railhead
USER 65532:65532
# Within a container the service listens on all of its addresses; who may reach them is for its runner to say.
ENV RAILHEAD_ADDR=0.0.0.0:8080 RAILHEAD_ADMIN_ADDR=0.0.0.0:8081
EXPOSE 8080 8081
HEALTHCHECK --interval=10s --timeout=3s --start-period=5s CMD ["/railhead", "healthcheck"]
ENTRYPOINT ["/railhead"]
CMD ["serve"]
