namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Reminders;

/// <summary>What the blocks of a day are called in the kitchen.</summary>
internal static class BlockWords
{
    public static string Of(BlockKind kind) => kind switch
    {
        BlockKind.Bake => "Bake",
        BlockKind.Fill => "Fill",
        BlockKind.Coat => "Coat",
        BlockKind.Decorate => "Decorate",
        BlockKind.Box => "Box",
        BlockKind.Drive => "Drive",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown block."),
    };
}
