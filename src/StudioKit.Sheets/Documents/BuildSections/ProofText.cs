using StudioKit.Planning;
using StudioKit.Planning.Cutting;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>How good a cut plan is, in a sentence.</summary>
internal static class ProofText
{
    public static string Of(CutProof proof) => proof switch
    {
        { ProvenOptimal: true } => $"Planned by {proof.Method}: no plan can be better.",
        { Gap: { } gap } => $"Planned by {proof.Method}: at most {MeasureFormat.Percent((double)gap)} above the best plan.",
        _ => $"Planned by {proof.Method}: not every piece can be cut.",
    };
}
