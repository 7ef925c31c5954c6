namespace StudioKit.Planning.Cutting;

/// <summary>How good a cut plan is, and how that is known.</summary>
/// <param name="Objective">What was made small.</param>
/// <param name="Value">The plan's own value: money, or a count [1].</param>
/// <param name="LowerBound">No plan that cuts every piece can be below this [1]; in the unit of <paramref name="Value"/>.</param>
/// <param name="Complete">Whether every piece is cut.</param>
/// <param name="Method">How the plan was found and the bound proven.</param>
public sealed record CutProof(CutObjective Objective, decimal Value, decimal LowerBound, bool Complete, string Method)
{
    /// <summary>Whether no plan can be better: every piece is cut and the value meets its bound.</summary>
    public bool ProvenOptimal => Complete && Value <= LowerBound;

    /// <summary>How far the plan may be from the best, as a part of its value [1]; null where pieces are left uncut.</summary>
    public decimal? Gap => !Complete ? null : Value <= LowerBound ? 0 : (Value - LowerBound) / Value;
}
