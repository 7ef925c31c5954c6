using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>The lit sheet about a subject.</summary>
/// <param name="Aside">Subject to either side edge; ≥ 0.</param>
/// <param name="Front">Subject to the front edge; ≥ 0.</param>
/// <param name="Back">Subject to the back edge of its flat part; ≥ 0.</param>
public sealed record SheetAround(Length Aside, Length Front, Length Back);
