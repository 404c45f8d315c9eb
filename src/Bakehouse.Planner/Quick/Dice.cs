namespace Bakehouse.Planner.Quick;

/// <summary>A small generator with a seed (xorshift, 32 bits): the same numbers on every machine.</summary>
internal sealed class Dice(uint seed)
{
    private uint state = seed == 0 ? 1 : seed;

    public uint Next()
    {
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        return state;
    }

    public int Below(int count) => (int)(Next() % (uint)count);

    public static uint Mix(uint a, uint b)
    {
        var x = (a * 2654435761u) ^ (b * 2246822519u);
        x ^= x >> 15;
        x *= 3266489917u;
        return x ^ (x >> 13);
    }
}
