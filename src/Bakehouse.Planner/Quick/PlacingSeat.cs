namespace Bakehouse.Planner.Quick;

/// <summary>Finding the next place for one step.</summary>
internal sealed partial class Placing
{
    private Seat Look(Act act)
    {
        var seat = new Seat { Low = windows.Early[act.Index], High = windows.Late[act.Index], Sharing = act.OnMachine, Holds = [] };
        foreach (var link in act.Out)
        {
            if (windows.Has(link) && board.Rows[link.To].Start >= 0)
            {
                seat.Holds.Add((link, GapsBefore(link, act)));
                seat.Blame |= UInt128.One << depth[link.To];
            }
        }

        foreach (var link in act.In)
        {
            if (windows.Has(link) && board.Rows[link.From].Start >= 0)
            {
                seat.Holds.Add((link, GapsAfter(link)));
                seat.Blame |= UInt128.One << depth[link.From];
            }
        }

        Limit(act, ref seat);
        BlameOwnHands(act, ref seat);
        seat.At = seat.High;
        return seat;
    }

    private void Limit(Act act, ref Seat seat)
    {
        foreach (var cap in act.CapsOut)
        {
            if (!terms.Keeps(cap.Kind) || !windows.Has(cap.To) || board.Rows[cap.To].Start is < 0 and var _)
            {
                continue;
            }

            var edge = board.Rows[cap.To].Start - cap.Grains - act.Grains;
            seat.Blame |= UInt128.One << depth[cap.To];
            if (cap.Kind == CapKind.Buffer)
            {
                seat.High = Math.Min(seat.High, edge);
            }
            else
            {
                seat.Low = Math.Max(seat.Low, edge);
            }
        }

        foreach (var cap in act.CapsIn)
        {
            if (cap.Kind != CapKind.Buffer && terms.Keeps(cap.Kind) && windows.Has(cap.From) && board.Rows[cap.From].Start >= 0)
            {
                seat.High = Math.Min(seat.High, board.End(shop.Acts[cap.From]) + cap.Grains);
                seat.Blame |= UInt128.One << depth[cap.From];
            }
        }
    }

    /// <summary>Steps of the same job that take this step's people, tools or machine in its window are to blame too.</summary>
    private void BlameOwnHands(Act act, ref Seat seat)
    {
        foreach (var (index, _) in done)
        {
            var other = shop.Acts[index];
            var meets = board.Rows[index].Start < seat.High + act.Grains && board.End(other) > seat.Low;
            if (meets && ((other.Hands & act.Hands) != 0 || other.Tools.AsSpan().ContainsAny(act.Tools) || other.Machines.AsSpan().ContainsAny(act.Machines)))
            {
                seat.Blame |= UInt128.One << depth[index];
            }
        }
    }

    private Gap[] GapsBefore(Link link, Act act)
    {
        var to = board.Rows[link.To].Start;
        var gaps = new Gap[link.In.Length];
        for (var i = 0; i < gaps.Length; i++)
        {
            var place = Preferred(link, i);
            var low = place.Passing ? to : to - place.Most;
            if (link.PinStore >= 0 && link.PinStore != place.Store)
            {
                low = int.MaxValue;
            }
            else if (low < to)
            {
                low = Math.Max(low, 0);
                low = Math.Max(low, board.StoreFull(place.Store, low, to, link) + 1);
            }

            gaps[i] = new Gap(place, low == int.MaxValue ? low : low - act.Grains, to - place.Least - act.Grains);
        }

        return gaps;
    }

    private Gap[] GapsAfter(Link link)
    {
        var end = board.End(shop.Acts[link.From]);
        var gaps = new Gap[link.In.Length];
        for (var i = 0; i < gaps.Length; i++)
        {
            var place = Preferred(link, i);
            var high = Math.Min(shop.Grains, place.Passing ? end : end + place.Most);
            if (high > end)
            {
                high = board.StoreFullFirst(place.Store, end, high, link);
            }

            gaps[i] = new Gap(place, end + place.Least, link.PinStore >= 0 && link.PinStore != place.Store ? -1 : high);
        }

        return gaps;
    }

    private Place Preferred(Link link, int i)
    {
        if (terms.Twist == 0 || link.In.Length == 1 || (Dice.Mix(terms.Twist, (uint)link.Index) & 3) != 0)
        {
            return link.In[i];
        }

        return link.In[(i + 1) % link.In.Length];
    }

    /// <summary>Puts the step at its next possible place and moves the seat on. False if there is none left.</summary>
    private bool Next(Act act, ref Seat seat, int failures)
    {
        seat.At -= failures / 6;
        while (true)
        {
            var at = seat.Sharing ? NextShared(act, ref seat) : NextOwn(act, ref seat);
            if (at)
            {
                return true;
            }

            if (!seat.Sharing)
            {
                return false;
            }

            (seat.Sharing, seat.At) = (false, seat.High);
        }
    }

    /// <summary>Latest start at or before <paramref name="at"/> that every hold allows, or -1.</summary>
    private static int Allowed(Seat seat, int at)
    {
        for (var again = true; again;)
        {
            again = false;
            foreach (var (_, gaps) in seat.Holds)
            {
                var best = -1;
                foreach (var gap in gaps)
                {
                    var high = Math.Min(at, gap.High);
                    best = high >= gap.Low && high > best ? high : best;
                }

                if (best < seat.Low)
                {
                    return -1;
                }

                again |= best < at;
                at = best;
            }
        }

        return at >= seat.Low ? at : -1;
    }
}
