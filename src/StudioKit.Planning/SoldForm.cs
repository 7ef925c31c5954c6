namespace StudioKit.Planning;

/// <summary>How the sizes of a thing stand beside its name.</summary>
public enum SoldForm
{
    /// <summary>It has none but its thickness.</summary>
    Plain,

    /// <summary>A length of stock, which has no other name.</summary>
    Bar,

    /// <summary>What is left of such a length.</summary>
    Offcut,

    /// <summary>A sheet with the sides that the shop sells.</summary>
    Stock,

    /// <summary>A sheet that the shop cuts to these sides.</summary>
    CutTo,

    /// <summary>Both sides behind a comma.</summary>
    Sides,

    /// <summary>Both sides right behind the name.</summary>
    Beside,
}
