using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Blur over the depth of a subject at every third-stop f-number that the lens has.</summary>
/// <param name="Subject">Name of the subject.</param>
/// <param name="Depth">Its depth along the line of sight.</param>
/// <param name="Points">Blur at each f-number, widest aperture first.</param>
/// <param name="Best">The sharpest of them.</param>
/// <param name="Chosen">The f-number that the plan sets.</param>
public sealed record SharpnessCurve(string Subject, Length Depth, IReadOnlyList<ApertureBlur> Points, FNumber Best, FNumber Chosen);
