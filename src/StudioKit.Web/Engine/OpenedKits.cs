using StudioKit.Kits;
using StudioKit.Kits.Forms;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Takes files for kits, by the reader's own limits, before anything else is done with them.</summary>
internal static class OpenedKits
{
    /// <summary>A file as text, or why it is none.</summary>
    public static OpenAnswer Answer(OpenRequest request)
    {
        var decoded = DecodedKit.Decode(Convert.FromBase64String(request.Base64), request.FileName);
        return decoded.Problem is { } problem ? new OpenAnswer(null, ProblemText.Of(problem.Message, PageHints.Of(problem))) : new OpenAnswer(decoded.Text, "") { Kind = KindOf(decoded.Text!) };
    }

    // By the keys that begin a line, or a photometric text by its line of tilt: what has one of a kit's is a kit, and so is what holds nothing: its reader says so.
    private static OpenedKind KindOf(string text)
    {
        var keys = text.Split('\n').Where(line => line.Length > 0 && (char.IsAsciiLetter(line[0]) || line[0] == '-')).Select(line => line.Split(':')[0].TrimEnd()).ToList();
        return keys.Contains("correction-of", StringComparer.Ordinal) ? OpenedKind.Correction
            : keys.Count == 0 || keys.Exists(key => KitGroup.Whole.Fields.Any(field => field.Key == key)) ? OpenedKind.Kit
            : text.Contains("\nTILT=", StringComparison.Ordinal) || keys.Contains("source", StringComparer.Ordinal) || keys[0].StartsWith('-') ? OpenedKind.Part
            : OpenedKind.Unsure;
    }

    /// <summary>The commented kit to begin with.</summary>
    public static OpenAnswer Starter(StarterRequest request) => new(StarterKit.Text, "");
}
