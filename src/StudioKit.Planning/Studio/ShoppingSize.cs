namespace StudioKit.Planning.Studio;

/// <summary>What the sizes of a line of the shopping list are.</summary>
public enum ShoppingSize
{
    /// <summary>There are none.</summary>
    None,

    /// <summary>Length of a stock bar.</summary>
    Bar,

    /// <summary>Sides of something flat that is bought in that size.</summary>
    Sides,

    /// <summary>Sides that the shop cuts it to.</summary>
    CutTo,

    /// <summary>Inside of a box.</summary>
    Inside,
}
