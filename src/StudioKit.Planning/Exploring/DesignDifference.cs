namespace StudioKit.Planning.Exploring;

/// <summary>An option that a design takes and the kit as it is written does not.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Option">The option taken.</param>
public sealed record DesignDifference(DesignChoice Choice, DesignOption Option);
