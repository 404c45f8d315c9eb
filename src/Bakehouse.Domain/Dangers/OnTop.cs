namespace Bakehouse.Domain.Dangers;

/// <summary>What is put on a finished cake and is no part of a recipe of its tiers.</summary>
/// <param name="Flowers">Null if none are asked for.</param>
/// <param name="Toppings">By <see cref="Topping.All"/>; each at most once.</param>
public sealed record OnTop(FreshFlowers? Flowers, IReadOnlyList<OrderedTopping> Toppings)
{
    /// <summary>Never prints what was ordered, nor from whom.</summary>
    public override string ToString() => "«kept out»";
}

/// <summary>Fresh flowers as they were asked for.</summary>
/// <param name="Kinds">Empty as long as nobody has said which.</param>
/// <param name="Florist">Who brings or grows them.</param>
public sealed record FreshFlowers(IReadOnlyList<OrderedFlower> Kinds, string Florist)
{
    /// <summary>Never prints who brings them.</summary>
    public override string ToString() => "«kept out»";
}

/// <summary>How a flower is kept from the cake.</summary>
public enum FlowerPut
{
    /// <summary>Nobody has said.</summary>
    NotSaid,

    /// <summary>It stands beside the cake and touches nothing of it.</summary>
    Beside,

    /// <summary>Its stem stands in a flower pick.</summary>
    Pick,

    /// <summary>Its stem is sealed with tape, and goes into no cake.</summary>
    Tape,

    /// <summary>It lies on a disc of board.</summary>
    Disc,

    /// <summary>It touches the cake.</summary>
    Touches,

    /// <summary>It was asked for; the owner does not put it on.</summary>
    LeftOff,
}

/// <summary>One kind of flower on an order.</summary>
/// <param name="Species">As it was named; the list is asked by <see cref="Flower.Named"/>.</param>
/// <param name="GrownToEat">Somebody has asked: it was grown as food.</param>
/// <param name="Stems">1 to 500.</param>
public sealed record OrderedFlower(string Species, FlowerPut Put, bool GrownToEat = false, int Stems = 1)
{
    /// <summary>True if it is on the cake and must be off before anybody cuts it.</summary>
    public bool ComesOff => Put is FlowerPut.Pick or FlowerPut.Tape or FlowerPut.Disc || (Put == FlowerPut.Touches && !GrownToEat);

    /// <inheritdoc/>
    public override string ToString() => "«kept out»";
}

/// <summary>A thing of the list on an order.</summary>
/// <param name="Topping">Its id.</param>
/// <param name="Count">Pieces, 1 to 500; what is strewn counts as one.</param>
public sealed record OrderedTopping(string Topping, int Count = 1);
