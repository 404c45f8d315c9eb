namespace Bakehouse.Domain.Dangers;

using static Bakehouse.Domain.Dangers.FlowerKnown;

/// <summary>
/// Flowers by what published lists say of them: the factual entries only. A flower that is missing here is not known, which never means that it is harmless.
/// </summary>
public static class FlowerList
{
    private const string Colorado = "Colorado State University Extension 7.237, table 1";
    private const string ColoradoEaten = "Colorado State University Extension 7.237, table 2 (as quoted)";
    private const string Maryland = "Maryland Poison Center 2012";
    private const string MarylandSaysNot = "Maryland Poison Center 2012 lists it as not poisonous";
    private const string Texas = "Texas Poison Center Network";
    private const string NorthCarolina = "North Carolina Extension, leaflet 8513, edible flowers";
    private const string Iowa = "Iowa State University Extension RG 302";
    private const string TexasAm = "Texas A&M, edible flowers";
    private const string Classes = "a nursery's list by toxicity class";
    private const string Memory = "from memory";

    /// <summary>All of them, the poisonous first.</summary>
    public static IReadOnlyList<Flower> All { get; } =
    [
        new("Convallaria", "Lily of the valley", Poisonous, $"{Colorado}; {Maryland}"),
        new("Hydrangea", "Hydrangea", Poisonous, $"{Maryland}; {Texas}", "snowball", "hortensia"),
        new("Digitalis", "Foxglove", Poisonous, Colorado),
        new("Nerium", "Oleander", Poisonous, $"{Colorado}; {Texas}"),
        new("Narcissus", "Daffodil", Poisonous, $"{Colorado}; {Maryland}", "jonquil", "paperwhite"),
        new("Hyacinthus", "Hyacinth", Poisonous, $"{Colorado}; {Maryland}"),
        new("Delphinium", "Larkspur", Poisonous, Colorado, "consolida"),
        new("Ranunculus", "Buttercup", Poisonous, $"{Texas}; NC State University, plant pages: all parts, in large amounts", "persian buttercup"),
        new("Zantedeschia", "Calla lily", Poisonous, $"{Colorado}; {Texas}", "calla", "arum lily", "arum"),
        new("Lathyrus", "Sweet pea", Poisonous, $"{Colorado}: its seeds"),
        new("Wisteria", "Wisteria", Poisonous, $"{Maryland}; {Texas}"),
        new("Iris", "Iris", Poisonous, $"{Maryland}; {Texas}"),
        new("Tulipa", "Tulip", Poisonous, $"{Texas}; {MarylandSaysNot}"),
        new("Anemone", "Anemone", Poisonous, $"{Classes}: minor, skin"),
        new("Rhododendron", "Azalea", Poisonous, $"{Colorado}; {Texas}"),
        new("Hedera", "Ivy", Poisonous, Maryland),
        new("Phoradendron", "Mistletoe", Poisonous, $"{Colorado}; {Maryland}", "viscum"),
        new("Aconitum", "Monkshood", Poisonous, $"{Colorado}; {Maryland}", "aconite"),
        new("Clematis", "Clematis", Poisonous, Colorado),
        new("Hippeastrum", "Amaryllis", Poisonous, $"{Colorado}; {Maryland}"),
        new("Lantana", "Lantana", Poisonous, $"{Colorado}; {Texas}"),
        new("Lobelia", "Lobelia", Poisonous, Colorado),
        new("Dicentra", "Bleeding heart", Poisonous, Colorado),
        new("Ipomoea", "Morning glory", Poisonous, Texas),
        new("Achillea", "Yarrow", Poisonous, Colorado),
        new("Cyclamen", "Cyclamen", Poisonous, $"{Maryland}; {Texas}"),
        new("Spathiphyllum", "Peace lily", Poisonous, $"{Maryland}; {Texas}"),
        new("Alstroemeria", "Peruvian lily", Poisonous, $"{Classes}: minor, skin"),
        new("Anthurium", "Flamingo flower", Poisonous, $"{Classes}: oxalates, skin"),
        new("Kalmia", "Mountain laurel", Poisonous, Maryland),
        new("Daphne", "Daphne", Poisonous, $"{Colorado}; {Texas}"),
        new("Colchicum", "Autumn crocus", Poisonous, Colorado),
        new("Ilex", "Holly", Poisonous, $"{Maryland}; {Texas}"),
        new("Papaver", "Poppy", Poisonous, Colorado),
        new("Helleborus", "Hellebore", Poisonous, Memory, "christmas rose", "lenten rose"),
        new("Adenium", "Desert rose", Poisonous, Memory),
        new("Viburnum", "Guelder rose", Poisonous, Memory),
        new("Euphorbia", "Poinsettia", Doubtful, $"{Colorado}: irritates, not edible; {MarylandSaysNot}"),
        new("Gypsophila", "Baby's breath", Doubtful, $"florists' habit to keep it off food, {Memory}; {MarylandSaysNot}"),
        new("Chrysanthemum", "Chrysanthemum", Doubtful, $"{Maryland}: poisonous; {NorthCarolina}: eaten", "mum"),
        new("Dianthus", "Carnation", Doubtful, $"{Texas}: poisonous; {NorthCarolina}: eaten", "sweet william"),
        new("Gladiolus", "Gladiolus", Doubtful, $"{Maryland}: poisonous; {TexasAm}: eaten", "gladioli", "gladiola"),
        new("Lilium", "Lily", Doubtful, $"{TexasAm}: eaten; {Maryland}: the Easter lily not poisonous; other lilies are"),
        new("Paeonia", "Peony", Doubtful, $"{TexasAm}: eaten; older garden lists: poisonous"),
        new("Bellis", "Daisy", Doubtful, $"{Texas}: poisonous; {ColoradoEaten}", "leucanthemum"),
        new("Eucalyptus", "Eucalyptus", Doubtful, $"{Texas}: poisonous"),
        new("Primula", "Primrose", Doubtful, $"{TexasAm}: eaten; others advise against it"),
        new("Dahlia", "Dahlia", Doubtful, Memory),
        new("Rosa", "Rose", GrownToEat, $"{Iowa}; {ColoradoEaten}"),
        new("Viola tricolor", "Viola", GrownToEat, $"{Iowa}; its seeds poisonous: {Texas}", "heartsease", "johnny jump up"),
        new("Viola odorata", "Sweet violet", GrownToEat, $"{Iowa}; its seeds poisonous: {Texas}", "violet"),
        new("Viola × wittrockiana", "Pansy", GrownToEat, Iowa),
        new("Calendula officinalis", "Calendula", GrownToEat, $"{Iowa}; {NorthCarolina}", "pot marigold"),
        new("Tropaeolum majus", "Nasturtium", GrownToEat, ColoradoEaten),
        new("Centaurea cyanus", "Cornflower", GrownToEat, NorthCarolina, "bachelor's button"),
        new("Borago officinalis", "Borage", GrownToEat, $"{Iowa}; {NorthCarolina}"),
        new("Lavandula angustifolia", "Lavender", GrownToEat, ColoradoEaten),
        new("Chamaemelum nobile", "Chamomile", GrownToEat, NorthCarolina),
        new("Monarda didyma", "Bee balm", GrownToEat, $"{Iowa}; {NorthCarolina}", "bergamot"),
        new("Taraxacum officinale", "Dandelion", GrownToEat, NorthCarolina),
    ];
}
