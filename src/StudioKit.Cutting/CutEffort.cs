namespace StudioKit.Cutting;

/// <summary>How much work a planner may spend before it settles for a gap.</summary>
/// <remarks>
/// Work is counted in nodes and operations, near a second a unit on a small computer, so that the same job gives the same plan on
/// any machine. A clock of four seconds a unit only stops a solver that counts too slowly; the gap it then leaves is reported.
/// </remarks>
/// <param name="ProofWork">For the least cost and its proof [units]; &gt; 0.</param>
/// <param name="TidyingWork">For fewer distinct patterns once the cost is settled [units]; ≥ 0.</param>
/// <param name="DirectWork">For settling a small job of bars by trying all, before a solver is loaded [units]; ≥ 0.</param>
public sealed record CutEffort(double ProofWork, double TidyingWork, double DirectWork)
{
    /// <summary>Enough for a workshop's batch within ten seconds.</summary>
    public static CutEffort Usual { get; } = new(2, 0.05, 0.3);
}
