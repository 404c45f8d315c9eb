namespace Bakehouse.Web.TheFreezer;

using System.Globalization;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Methods;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;
using NodaTime.Text;

/// <summary>Counts spare sponges: one tap more or fewer, and a small form for a new baking.</summary>
public sealed partial class FreezerPage
{
    private static readonly IReadOnlyList<(string, string)> Sponges = [.. Sponge.All.Select(s => (s.Id, s.Name))];

    private string sponge = Sponge.All[0].Id;
    private string pan = "8";
    private string count = "2";
    private string frozen = "";
    private string said = "";
    private SpareSponges? before;
    private IReadOnlyList<Problem> problems = [];

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private LocalDate Today => Words.Of(Book.State.Shop).Now(Clock).Date;

    private SpareWords Said => new(Book.State.Shop!);

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        frozen = LocalDatePattern.Iso.Format(Today);
        Book.Changed += Refresh;
    }

    /// <summary>Listens no longer.</summary>
    public void Dispose()
    {
        Book.Changed -= Refresh;
        GC.SuppressFinalize(this);
    }

    /// <summary>Somebody counted elsewhere.</summary>
    private void Refresh(BookState state) => _ = InvokeAsync(StateHasChanged);

    /// <summary>What is typed is added to what is counted of the same baking.</summary>
    private Task PutIn()
    {
        problems = [.. Wrong()];
        (said, before) = ("", null);
        if (problems.Count > 0)
        {
            return Task.CompletedTask;
        }

        var some = new SpareSponges(sponge, Whole(pan)!.Value, LocalDatePattern.Iso.Parse(frozen).Value, Whole(count)!.Value);
        var there = Book.State.Freezer.FirstOrDefault(some.IsSameAs);
        return Count(some with { Count = some.Count + (there?.Count ?? 0) }, there ?? some with { Count = 0 });
    }

    private async Task Count(SpareSponges spares, SpareSponges? undo)
    {
        var answer = await Book.Enter(new CountSpares(Guid.NewGuid(), Here.Person, Here.Device, spares));
        problems = answer.Problems;
        (said, before) = answer.Kind == AnswerKind.Accepted
            ? ($"{Said.Of(spares)}: {(spares.Count == 0 ? "none" : spares.Count.ToString(CultureInfo.InvariantCulture))} in the freezer.", undo)
            : (problems.Count > 0 ? "" : answer.Message, null);
    }

    private IEnumerable<Problem> Wrong()
    {
        if (Whole(pan) is null)
        {
            yield return new Problem("pan", pan, "That is no size.", "Write whole inches, such as 8.");
        }

        if (Whole(count) is not > 0)
        {
            yield return new Problem("count", count, "That is no number of sponges.", "Write 1 or more.");
        }

        if (!LocalDatePattern.Iso.Parse(frozen).Success)
        {
            yield return new Problem("frozen", frozen, "That is no day.", "Choose the day they went in.");
        }
    }

    private static int? Whole(string text) => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;
}
