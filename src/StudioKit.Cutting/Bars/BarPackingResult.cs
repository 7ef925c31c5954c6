using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Whether all pieces of a job fit into given bars.</summary>
/// <param name="Bars">How they fit; null where no way was found.</param>
/// <param name="ProvenImpossible">Whether there is no way.</param>
/// <param name="Work">Work that the answer took [units].</param>
internal sealed record BarPackingResult(List<BarPattern>? Bars, bool ProvenImpossible, double Work);
