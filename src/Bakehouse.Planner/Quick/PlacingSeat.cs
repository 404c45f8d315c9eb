namespace Bakehouse.Planner.Quick;

/// <summary>Finding the next place for one step.</summary>
internal sealed partial class Placing
{
    private Seat Look(Act act, Seat seat)
    {
        var starts = openings.Of(act);
        seat.Clear(Bits.NextSet(starts, 0), Bits.LastSet(starts, shop.Grains), act.OnMachine);
        foreach (var link in act.Out)
        {
            if (openings.Has(link) && board.Rows[link.To].Start >= 0)
            {
                GapsBefore(link, act, seat.Add(link));
                seat.Blame |= UInt128.One << depth[link.To];
            }
        }

        foreach (var link in act.In)
        {
            if (openings.Has(link) && board.Rows[link.From].Start >= 0)
            {
                GapsAfter(link, seat.Add(link));
                seat.Blame |= UInt128.One << depth[link.From];
            }
        }

        Limit(act, seat);
        Narrow(seat);
        BlameOwnHands(act, seat);
        seat.At = Begin(act, seat);
        return seat;
    }

    /// <summary>Where the search begins: at the latest start, or by the dice somewhere before it, more often near than far.</summary>
    private int Begin(Act act, Seat seat)
    {
        var roll = terms.Early == 0 ? uint.MaxValue : Dice.Mix(terms.Twist + 77, (uint)act.Index);
        if ((roll & 255) >= terms.Early || seat.High <= seat.Low)
        {
            return seat.High;
        }

        var share = (roll >> 8) / (double)(1 << 24);
        return seat.High - (int)((seat.High - seat.Low) * share * share * share);
    }

    private void Limit(Act act, Seat seat)
    {
        foreach (var cap in act.CapsOut)
        {
            if (!terms.Keeps(cap.Kind) || !openings.Has(cap.To) || board.Rows[cap.To].Start is < 0 and var _)
            {
                continue;
            }

            var edge = board.Rows[cap.To].Start - terms.Limit(cap) - act.Grains;
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
            if (cap.Kind != CapKind.Buffer && terms.Keeps(cap.Kind) && openings.Has(cap.From) && board.Rows[cap.From].Start >= 0)
            {
                seat.High = Math.Min(seat.High, board.End(shop.Acts[cap.From]) + terms.Limit(cap));
                seat.Blame |= UInt128.One << depth[cap.From];
            }
        }
    }

    /// <summary>No earlier and no later than its holds allow in any store.</summary>
    private static void Narrow(Seat seat)
    {
        foreach (ref readonly var stay in seat.Stays)
        {
            var (low, high) = (int.MaxValue, -1);
            foreach (ref readonly var gap in stay.Stores)
            {
                if (gap.Low <= gap.High)
                {
                    (low, high) = (Math.Min(low, gap.Low), Math.Max(high, gap.High));
                }
            }

            (seat.Low, seat.High) = (Math.Max(seat.Low, low), Math.Min(seat.High, high));
        }
    }

    /// <summary>Steps of the same job that take this step's people, tools or machine in its window are to blame too.</summary>
    private void BlameOwnHands(Act act, Seat seat)
    {
        foreach (var (index, _) in done)
        {
            var other = shop.Acts[index];
            if (((other.Hands & act.Hands) | (other.Kit & act.Kit)) != 0 && board.Rows[index].Start < seat.High + act.Grains && board.End(other) > seat.Low)
            {
                seat.Blame |= UInt128.One << depth[index];
            }
        }
    }

    /// <summary>So are those in the way of the steps that must come shortly before it.</summary>
    private void BlameBefore(int k, Seat seat)
    {
        ulong hands = 0, kit = 0;
        foreach (var act in build.ShortlyBefore[k])
        {
            (hands, kit) = (hands | act.Hands, kit | act.Kit);
        }

        foreach (var (index, _) in done)
        {
            var other = shop.Acts[index];
            if (((other.Hands & hands) | (other.Kit & kit)) != 0 && board.Rows[index].Start < BlameHigh(k))
            {
                seat.Blame |= UInt128.One << depth[index];
            }
        }
    }

    private int BlameHigh(int k)
    {
        var high = 0;
        foreach (ref readonly var stay in seats[k].Stays)
        {
            foreach (ref readonly var gap in stay.Stores)
            {
                high = Math.Max(high, gap.High);
            }
        }

        return high == 0 ? shop.Grains : high + build.Acts[k].Grains;
    }

    private void GapsBefore(Link link, Act act, Span<Gap> gaps)
    {
        var to = board.Rows[link.To].Start;
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
    }

    private void GapsAfter(Link link, Span<Gap> gaps)
    {
        var end = board.End(shop.Acts[link.From]);
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
    private bool Next(Act act, Seat seat, int failures)
    {
        seat.At -= failures / 6;
        while (true)
        {
            var at = seat.Sharing ? NextShared(act, seat) : NextOwn(act, seat);
            if (at)
            {
                return true;
            }

            if (!seat.Sharing)
            {
                return false;
            }

            (seat.Sharing, seat.At) = (false, Begin(act, seat));
        }
    }

    /// <summary>Latest start at or before <paramref name="at"/> that is open and that every hold allows, or -1.</summary>
    private int Allowed(Act act, Seat seat, int at)
    {
        var starts = openings.Of(act);
        for (var again = true; again;)
        {
            var open = Bits.LastSet(starts, at);
            at = open;
            foreach (ref readonly var stay in seat.Stays)
            {
                at = Latest(stay.Stores, at);
            }

            again = at < open;
            if (at < seat.Low)
            {
                return -1;
            }
        }

        return at;
    }

    private static int Latest(ReadOnlySpan<Gap> gaps, int at)
    {
        var best = -1;
        foreach (ref readonly var gap in gaps)
        {
            var high = Math.Min(at, gap.High);
            best = high >= gap.Low && high > best ? high : best;
        }

        return best;
    }
}
