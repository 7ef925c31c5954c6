using StudioKit.Kits;
using StudioKit.Kits.Completing;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>What could stand where somebody types.</summary>
/// <param name="parts">Where parts are looked up.</param>
internal sealed class Completions(OwnParts parts)
{
    /// <summary>The candidates at a place.</summary>
    public CompleteAnswer Answer(CompleteRequest request) => new(
        [.. KitCompletion.At(request.Text, request.Position, parts.Library).Select(found => new Candidate(found.Label, Word(found.Kind), found.Help, found.Edit.Start, found.Edit.Length, found.Edit.NewText))]);

    private static string Word(KitCandidateKind kind) => kind == KitCandidateKind.Default ? "taken otherwise" : MemberText.Of(kind);
}
