namespace Bakehouse.Web.Shell;

/// <summary>The six marks. Their silhouettes differ without any colour; a mark never stands without its word.</summary>
public enum MarkKind
{
    /// <summary>A whole cake with a tick.</summary>
    InTime,

    /// <summary>A cake with a slice pulled out.</summary>
    Tight,

    /// <summary>A square tile with a bar.</summary>
    Late,

    /// <summary>A hatched ring.</summary>
    Waiting,

    /// <summary>A ring with a tick.</summary>
    Done,

    /// <summary>A dotted ring.</summary>
    NotKnown,
}
