namespace StudioKit.Planning.Cutting.Reports;

/// <summary>How good a plan is, in plain numbers.</summary>
/// <param name="Objective">What was made small: <c>cost</c> or <c>count</c>.</param>
/// <param name="Value">The plan's own value [1].</param>
/// <param name="LowerBound">No plan can be below this [1].</param>
/// <param name="Gap">How far the plan may be from the best, as a part of its value [1]; null where pieces are uncut.</param>
/// <param name="Method">How it was found and proven.</param>
/// <param name="KerfConvention">How the saw cut is counted.</param>
public sealed record ReportedProof(
    string Objective, decimal Value, decimal LowerBound, decimal? Gap, string Method, string KerfConvention)
{
    internal static ReportedProof From(CutProof proof, string convention) => new(
        proof.Objective == CutObjective.Cost ? "cost" : "count", proof.Value, proof.LowerBound, proof.Gap, proof.Method, convention);
}
