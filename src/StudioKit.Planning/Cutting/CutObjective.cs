namespace StudioKit.Planning.Cutting;

/// <summary>What a cut plan makes small first.</summary>
public enum CutObjective
{
    /// <summary>The money spent on stock.</summary>
    Cost,

    /// <summary>The number of bars or sheets taken, where no stock has a price.</summary>
    Count,
}
