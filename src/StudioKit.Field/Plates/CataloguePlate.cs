namespace StudioKit.Field.Plates;

/// <summary>One page of a catalogue.</summary>
/// <param name="Format">Paper.</param>
/// <param name="Places">Portraits in their places.</param>
/// <param name="CommonScale">Print scale that all portraits share [1]; none where each has its own.</param>
public sealed record CataloguePlate(PlateFormat Format, IReadOnlyList<PlatePlace> Places, double? CommonScale);
