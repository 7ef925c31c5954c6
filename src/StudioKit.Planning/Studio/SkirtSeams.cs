using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>What a skirt's sheet has over the wall it hangs before.</summary>
/// <param name="SideHem">Folded over and sewn at either side.</param>
/// <param name="RoundRail">Goes round the rail at the top.</param>
public sealed record SkirtSeams(Length SideHem, Length RoundRail);
