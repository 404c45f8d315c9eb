namespace Bakehouse.Book.Keeping;

/// <summary>The book can't be opened; the message says why and what to try. Nothing was changed.</summary>
public sealed class BookClosedException(string message, Exception? inner = null, WhyClosed why = WhyClosed.Unreadable) : Exception(message, inner)
{
    /// <summary>Why, for who started the app by a program.</summary>
    public WhyClosed Why { get; } = why;
}

/// <summary>Why a book can't be opened. The number is the exit code of a start that was refused.</summary>
public enum WhyClosed
{
    /// <summary>The file is no book, is damaged, or its folder can't be made.</summary>
    Unreadable = 3,

    /// <summary>Another Bakehouse has it open.</summary>
    OpenElsewhere = 4,

    /// <summary>A newer Bakehouse wrote it.</summary>
    Newer = 5,

    /// <summary>File, folder or disk may only be read.</summary>
    ReadOnly = 6,

    /// <summary>Another program, no Bakehouse, holds it.</summary>
    Held = 7,

    /// <summary>The disk is full.</summary>
    DiskFull = 8,

    /// <summary>This disk or this library can't keep a book as it must be kept.</summary>
    Unfit = 9,
}
