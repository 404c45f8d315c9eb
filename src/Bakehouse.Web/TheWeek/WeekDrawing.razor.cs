namespace Bakehouse.Web.TheWeek;

using System.Globalization;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

/// <summary>The drawn week. A tap on a cake lights its chain up; all others fall to 35 %.</summary>
public partial class WeekDrawing
{
    /// <summary>Over so many cakes the rows scroll, and ruler, lanes and key stay.</summary>
    private const int Many = 14;

    /// <summary>What is drawn.</summary>
    [Parameter, EditorRequired]
    public WeekPicture Picture { get; set; } = default!;

    /// <summary>Px of the heads at the left.</summary>
    [Parameter]
    public double Heads { get; set; } = WeekInk.HeadWide;

    /// <summary>Id of the chosen cake, or null.</summary>
    [Parameter]
    public string? Chosen { get; set; }

    /// <summary>Id of the chosen step, or null.</summary>
    [Parameter]
    public string? ChosenStep { get; set; }

    /// <summary>Another cake or step was chosen; both null for none.</summary>
    [Parameter]
    public EventCallback<(string? Cake, string? Step)> OnChosen { get; set; }

    /// <summary>Enter on a chosen cake.</summary>
    [Parameter]
    public EventCallback<CakeFacts> OnOpen { get; set; }

    /// <summary>The move that is going on: its places light up.</summary>
    [Parameter]
    public Moving? Move { get; set; }

    /// <summary>A lit place was tapped: whose lane (null on the cake's row) and how many px from the left of the axis.</summary>
    [Parameter]
    public EventCallback<(string? Person, double X)> OnPlace { get; set; }

    private string Look => (Chosen is null ? "wk" : "wk has-one") + (Picture.Rows.Count > Many ? " is-many" : "");

    private string Says
    {
        get
        {
            var words = Words.Of(Picture.Facts.Shop);
            return $"The week from {words.LongDay(Picture.Window.First)} to {words.LongDay(Picture.Window.Last)}: {Picture.Rows.Count} cakes. Arrow keys move between cakes and steps, Enter opens.";
        }
    }

    private string RowsGround
    {
        get
        {
            var svg = new Svg();
            WeekInk.Ground(svg, Picture, Picture.RowsHigh);
            foreach (var row in Picture.Rows)
            {
                svg.Path("w-row", $"M0 {Svg.F(row.Y + WeekPicture.RowHigh - 0.5)}H{Svg.F(Picture.Width)}");
            }

            return svg.ToString();
        }
    }

    /// <summary>One rule of style lights a chain up in rows and lanes, so nothing else must be drawn again.</summary>
    private MarkupString Lit
    {
        get
        {
            var index = IndexOf(Chosen);
            return new(index < 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"<style>.wk .c{{opacity:.35}}.wk .c{index}{{opacity:1}}</style>"));
        }
    }

    private string LightOf(CakeRow row) => WeekInk.Of(Picture, row.Cake.Id) + (row.Cake.Id == Chosen ? " lit" : "");

    private int IndexOf(string? cake)
    {
        for (var i = 0; i < Picture.Rows.Count; i++)
        {
            if (Picture.Rows[i].Cake.Id == cake)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The same tap again lets go.</summary>
    private Task Tap(string cake, string? step) =>
        OnChosen.InvokeAsync(cake == Chosen && step == ChosenStep ? (null, null) : (cake, step));

    private Task Key(KeyboardEventArgs pressed)
    {
        var index = IndexOf(Chosen);
        return pressed.Key switch
        {
            "ArrowDown" => Go(Math.Min(Picture.Rows.Count - 1, index + 1)),
            "ArrowUp" => Go(Math.Max(0, index < 0 ? 0 : index - 1)),
            "ArrowRight" when index >= 0 => Along(Picture.Rows[index], 1),
            "ArrowLeft" when index >= 0 => Along(Picture.Rows[index], -1),
            "Enter" when index >= 0 => OnOpen.InvokeAsync(Picture.Rows[index].Cake),
            "Escape" => OnChosen.InvokeAsync((null, null)),
            _ => Task.CompletedTask,
        };
    }

    private Task Go(int index) => OnChosen.InvokeAsync((Picture.Rows[index].Cake.Id, null));

    private Task Along(CakeRow row, int by)
    {
        var steps = row.Blocks.Select(b => b.Step.Id).ToList();
        var at = ChosenStep is null ? (by > 0 ? -1 : steps.Count) : steps.IndexOf(ChosenStep);
        return steps.Count == 0 ? Task.CompletedTask : OnChosen.InvokeAsync((row.Cake.Id, steps[Math.Clamp(at + by, 0, steps.Count - 1)]));
    }
}
