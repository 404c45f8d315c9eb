namespace Bakehouse.Planner.Quick;

/// <summary>What is out of use.</summary>
internal sealed partial class Board
{
    private void CloseWhatIsDown()
    {
        for (var i = 0; i < shop.ToolCount.Length; i++)
        {
            Close(tools, i, shop.Week.Tools[i].Down, Closed);
            Note(i, 0, grains);
        }

        for (var i = 0; i < shop.StorePlaces.Length; i++)
        {
            Close(stores, i, shop.Week.Stores[i].Down, Closed);
        }

        for (var i = 0; i < shop.Machines.Length; i++)
        {
            Close(runAt, i, shop.Week.Machines[i].Down, Down);
            foreach (var (from, to) in shop.Week.Machines[i].Down.Select(Grains))
            {
                Bits.Set(machineTaken.AsSpan(i * words, words), from, to);
            }
        }
    }

    private void Close(short[] rows, int row, IReadOnlyList<Domain.Planning.Span> down, short mark)
    {
        foreach (var (from, to) in down.Select(Grains))
        {
            rows.AsSpan((row * grains) + from, to - from).Fill(mark);
        }
    }

    private (int From, int To) Grains(Domain.Planning.Span span)
    {
        var from = Math.Clamp(span.From / shop.Grain, 0, grains);
        return (from, Math.Clamp((span.To + shop.Grain - 1) / shop.Grain, from, grains));
    }
}
