namespace Bakehouse.Planner.Quick;

/// <summary>Runs of machines, clean-downs and the air.</summary>
internal sealed partial class Board
{
    /// <summary>Start of the last run of a machine at or before a grain, or -1.</summary>
    public int LastRun(int machine, int at) => Bits.LastSet(starts.AsSpan(machine * words, words), at);

    /// <summary>Start of its last run of a family or heat at or before a grain, or -1.</summary>
    public int LastRunOf(int machine, int code, int at) => Bits.LastSet(startsOf.AsSpan(((machine * shop.Codes) + code) * words, words), at);

    /// <summary>Starts of a machine's runs of a family or heat.</summary>
    public ReadOnlySpan<ulong> RunsOf(int machine, int code) => startsOf.AsSpan(((machine * shop.Codes) + code) * words, words);

    /// <summary>Grains at which the machine has a run or a clean-down or is out of use.</summary>
    public ReadOnlySpan<ulong> MachineTaken(int machine) => machineTaken.AsSpan(machine * words, words);

    /// <summary>Last grain in [from, to) at which the machine has a run or a clean-down or is out of use, or -1.</summary>
    public int BusyUntil(int machine, int from, int to)
    {
        var at = runAt.AsSpan((machine * grains) + from, Math.Min(grains, to) - from).LastIndexOfAnyExcept((short)0);
        return at < 0 ? -1 : from + at;
    }

    public int NextRun(int machine, int at) => Bits.NextSet(starts.AsSpan(machine * words, words), at);

    /// <summary>Number of the run that a machine has at a grain.</summary>
    public int RunAt(int machine, int at) => runAt[(machine * grains) + at] - 1;

    /// <summary>True if a run of this code may stand there: the machine is free and turn times are kept on both sides.</summary>
    public bool MachineFree(int machine, int code, int from, int to, int except = -1)
    {
        if (from < 0 || to > grains)
        {
            return false;
        }

        if (runAt.AsSpan((machine * grains) + from, to - from).IndexOfAnyExcept((short)0, (short)(except + 1)) >= 0)
        {
            return false;
        }

        var facts = shop.Machines[machine];
        var most = Math.Max(facts.TurnSame, facts.TurnOther);
        return TurnKept(machine, code, from - 1, -1, most) && TurnKept(machine, code, to, 1, most);
    }

    public bool BowlIdle(int machine, int from, int to)
        => to <= grains && runAt.AsSpan((machine * grains) + from, to - from).IndexOfAnyExcept((short)0) < 0;

    /// <summary>True if the air is clear enough for this mix (rule A3).</summary>
    public bool AirClear(Act act, int start)
    {
        for (var a = 0; a < shop.Air.Length; a++)
        {
            var (bit, settle) = shop.Air[a];
            var end = start + act.Grains;
            if ((act.Avoid & bit) != 0 && airHas.AsSpan((a * grains) + start, act.Grains).IndexOfAnyExcept((short)0) >= 0)
            {
                return false;
            }

            if ((act.Has & bit) != 0 && airAvoid.AsSpan((a * grains) + start, Math.Min(grains, end + settle) - start).IndexOfAnyExcept((short)0) >= 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Opens a run for the first member. Returns its number.</summary>
    public int Open(Act act, int machine, int start, ulong people)
    {
        var number = freeRuns[--freeCount];
        Runs[number] = new Run { Machine = machine, Start = start, End = start, Code = act.Code, People = act.IsMix ? people : 0, First = -1 };
        return number;
    }

    public void Join(Act act, int number)
    {
        Lift(number);
        ref var run = ref Runs[number];
        nextInRun[act.Index] = run.First;
        run.First = act.Index;
        Count(ref run, act);
        Lay(number);
        Breathe(act, run.Start, 1);
    }

    public void Leave(Act act, int number)
    {
        Breathe(act, Runs[number].Start, -1);
        Lift(number);
        ref var run = ref Runs[number];
        var (member, people) = (run.First, run.People);
        run = new Run { Machine = run.Machine, Start = run.Start, End = run.Start, Code = run.Code, People = people, First = -1 };
        while (member >= 0)
        {
            var next = nextInRun[member];
            if (member != act.Index)
            {
                nextInRun[member] = run.First;
                run.First = member;
                Count(ref run, shop.Acts[member]);
            }

            member = next;
        }

        Lay(number);
        if (run.Members == 0)
        {
            freeRuns[freeCount++] = number;
        }
    }

    public void AddClean(Clean clean)
    {
        var length = shop.Machines[clean.Machine].CleanGrains;
        Cleans.Add(clean);
        runAt.AsSpan((clean.Machine * grains) + clean.Start, length).Fill(Cleaning);
        Bits.Set(machineTaken.AsSpan(clean.Machine * words, words), clean.Start, clean.Start + length);
        Take(1UL << clean.Person, clean.Start, clean.Start + length);
    }

    public void DropClean(int index)
    {
        var clean = Cleans[index];
        var length = shop.Machines[clean.Machine].CleanGrains;
        Cleans.RemoveAt(index);
        runAt.AsSpan((clean.Machine * grains) + clean.Start, length).Clear();
        Bits.Clear(machineTaken.AsSpan(clean.Machine * words, words), clean.Start, clean.Start + length);
        Release(1UL << clean.Person, clean.Start, clean.Start + length);
    }

    private static void Count(ref Run run, Act act)
    {
        run.Members++;
        run.End = Math.Max(run.End, run.Start + act.Grains);
        run.Size += act.Size;
        run.Pans += act.Pans;
        run.Has |= act.Has;
        run.Avoid |= act.Avoid;
    }

    private bool TurnKept(int machine, int code, int at, int step, int most)
    {
        for (var gap = 0; gap < most && at >= 0 && at < grains; gap++, at += step)
        {
            var owner = runAt[(machine * grains) + at];
            if (owner == Cleaning)
            {
                return true;
            }

            if (owner > 0)
            {
                return gap >= (Runs[owner - 1].Code == code ? shop.Machines[machine].TurnSame : shop.Machines[machine].TurnOther);
            }
        }

        return true;
    }

    private void Lift(int number)
    {
        ref var run = ref Runs[number];
        runAt.AsSpan((run.Machine * grains) + run.Start, run.End - run.Start).Clear();
        Bits.Clear(machineTaken.AsSpan(run.Machine * words, words), run.Start, run.End);
        Release(run.People, run.Start, run.End);
        starts[(run.Machine * words) + (run.Start >> 6)] &= ~(1UL << run.Start);
        startsOf[(((run.Machine * shop.Codes) + run.Code) * words) + (run.Start >> 6)] &= ~(1UL << run.Start);
    }

    private void Lay(int number)
    {
        ref var run = ref Runs[number];
        if (run.Members == 0)
        {
            return;
        }

        runAt.AsSpan((run.Machine * grains) + run.Start, run.End - run.Start).Fill((short)(number + 1));
        Bits.Set(machineTaken.AsSpan(run.Machine * words, words), run.Start, run.End);
        Take(run.People, run.Start, run.End);
        starts[(run.Machine * words) + (run.Start >> 6)] |= 1UL << run.Start;
        startsOf[(((run.Machine * shop.Codes) + run.Code) * words) + (run.Start >> 6)] |= 1UL << run.Start;
    }

    private void Breathe(Act act, int start, short by)
    {
        for (var a = 0; act.IsMix && a < shop.Air.Length; a++)
        {
            var (bit, settle) = shop.Air[a];
            if ((act.Has & bit) != 0)
            {
                Add(airHas, a, start, Math.Min(grains, start + act.Grains + settle), by);
            }

            if ((act.Avoid & bit) != 0)
            {
                Add(airAvoid, a, start, start + act.Grains, by);
            }
        }
    }
}
