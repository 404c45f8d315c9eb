namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;

/// <summary>One device: what it last drew, and what it could not send or was not answered.</summary>
internal sealed class Screen(string device, string person)
{
    public string Device { get; } = device;

    public string Person { get; } = person;

    public BookState Seen { get; set; } = null!;

    public bool Gone { get; set; }

    /// <summary>The newest move that was made here, to be taken back.</summary>
    public PinStep? Moved { get; set; }

    public Queue<Command> Unsent { get; } = [];
}
