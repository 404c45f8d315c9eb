namespace Bakehouse.Web.Figures;

using Bakehouse.Book.Figures;
using OpenTelemetry.Exporter;
using OpenTelemetry.Metrics;

/// <summary>Counts, and tells the counts to a collector only if its address is set.</summary>
internal static class Telling
{
    /// <summary>Address of a collector that takes OTLP over HTTP, such as http://collector:4318/v1/metrics. Without it nothing leaves the app.</summary>
    public const string Setting = "Figures:Tell";

    public static void AddFigures(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<BellFigures>();
        if (builder.Configuration[Setting] is { Length: > 0 } address)
        {
            builder.Services.AddOpenTelemetry().WithMetrics(metrics => metrics
                .AddMeter(BookFigures.MeterName)
                .AddOtlpExporter(otlp =>
                {
                    otlp.Endpoint = new Uri(address);
                    otlp.Protocol = OtlpExportProtocol.HttpProtobuf;
                }));
        }
    }
}
