using StudioKit.Kits;
using StudioKit.Kits.Completing;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>What could stand where somebody types.</summary>
internal static class Completions
{
    /// <summary>The candidates at a place.</summary>
    public static CompleteAnswer Answer(CompleteRequest request) => new(
        [.. KitCompletion.At(request.Text, request.Position).Select(found => new Candidate(found.Label, Word(found.Kind), found.Help, found.Edit.Start, found.Edit.Length, found.Edit.NewText))]);

    private static string Word(KitCandidateKind kind) => kind == KitCandidateKind.Default ? "taken otherwise" : MemberText.Of(kind);
}
