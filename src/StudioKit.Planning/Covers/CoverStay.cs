using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>How long an animal may stay in a cover.</summary>
/// <param name="Limit">The limit that rules.</param>
/// <param name="Kind">What sets it.</param>
public sealed record CoverStay(Duration Limit, CoverStayKind Kind);
