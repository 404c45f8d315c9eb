namespace Bakehouse.Web.Bell;

using System.Collections.Concurrent;

/// <summary>Which screens can be heard: each says so about twice a minute while its sound is on. A state of the present; kept nowhere.</summary>
public sealed class Ears(TimeProvider time)
{
    private static readonly TimeSpan Silence = TimeSpan.FromMinutes(2);
    private readonly ConcurrentDictionary<string, long> heard = new(StringComparer.Ordinal);
    private readonly long opened = time.GetTimestamp();

    /// <summary>Screens heard from within two minutes.</summary>
    public int WithSound => heard.Values.Count(stamp => time.GetElapsedTime(stamp) < Silence);

    /// <summary>True if no screen with sound was heard from for two minutes.</summary>
    public bool Nobody => WithSound == 0 && time.GetElapsedTime(opened) >= Silence;

    /// <summary>A screen says that its sound is on.</summary>
    public void Hear(string device)
    {
        heard[device] = time.GetTimestamp();
        foreach (var gone in heard.Where(h => time.GetElapsedTime(h.Value) >= Silence))
        {
            heard.TryRemove(gone);
        }
    }
}
