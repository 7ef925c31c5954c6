using UnitsNet;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>How a sheet stands between its poles.</summary>
/// <param name="PoleSpacing">Poles from middle to middle.</param>
/// <param name="PlayPerEdge">Room that is left for the sheet to grow at either side edge.</param>
/// <param name="PoleOverFoot">Length of a pole over the ground, or over the rail that holds it.</param>
/// <param name="ClipsPerPole">Clips that hold the sheet to each pole [1].</param>
/// <param name="ClipSpacing">Clip to clip along a pole.</param>
/// <param name="ClipPull">Pull that each clip must hold in the gust.</param>
/// <param name="BarPush">Push of a pole on the bar under the rail in the gust; nought without a frame.</param>
/// <param name="TopLean">How far the gust leans a pole's top.</param>
/// <param name="Bow">How far the gust bows the middle of the sheet between its poles.</param>
/// <param name="HighestGust">The strongest gust that it stands in by every check.</param>
/// <param name="Weakest">What gives first.</param>
/// <param name="Checks">Every check of it, in the order to print them.</param>
public sealed record UprightStandResult(
    Length PoleSpacing,
    Length PlayPerEdge,
    Length PoleOverFoot,
    int ClipsPerPole,
    Length ClipSpacing,
    Force ClipPull,
    Force BarPush,
    Length TopLean,
    Length Bow,
    Speed HighestGust,
    StructuralCheckKind Weakest,
    IReadOnlyList<StructuralCheck> Checks);
