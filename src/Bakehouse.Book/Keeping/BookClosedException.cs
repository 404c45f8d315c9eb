namespace Bakehouse.Book.Keeping;

/// <summary>The book can't be opened; the message says why and what to try. Nothing was changed.</summary>
public sealed class BookClosedException(string message, Exception? inner = null) : Exception(message, inner);
