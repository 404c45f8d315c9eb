namespace Bakehouse.Web.Figures;

using System.Diagnostics.Metrics;
using Bakehouse.Book.Figures;
using Bakehouse.Domain.Reminders;

/// <summary>What the bell counts for whoever listens: kinds and numbers, never whose.</summary>
public sealed class BellFigures
{
    private readonly Counter<long> due;
    private readonly UpDownCounter<long> screens;

    /// <summary>Counts on Bakehouse's meter.</summary>
    public BellFigures(IMeterFactory meters)
    {
        var meter = meters.Create(BookFigures.MeterName);
        due = meter.CreateCounter<long>("bakehouse.rings.due", "{ring}", "Rings that began to ring since the app was started, by kind.");
        screens = meter.CreateUpDownCounter<long>("bakehouse.screens", "{screen}", "Kitchen screens that listen now.");
    }

    /// <summary>Counts the rings that did not ring before.</summary>
    public void Rang(IReadOnlyList<Ring> before, IReadOnlyList<Ring> now)
    {
        var known = before.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var ring in now.Where(r => !known.Contains(r.Id)))
        {
            due.Add(1, new KeyValuePair<string, object?>("kind", ring.Kind.ToString()));
        }
    }

    /// <summary>A screen began to listen.</summary>
    public void ScreenCame() => screens.Add(1);

    /// <summary>A screen listens no more.</summary>
    public void ScreenWent() => screens.Add(-1);
}
