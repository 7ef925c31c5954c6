using StudioKit.Kits;
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
        return decoded.Problem is { } problem ? new OpenAnswer(null, ProblemText.Of(problem.Message, PageHints.Of(problem))) : new OpenAnswer(decoded.Text, "");
    }

    /// <summary>The commented kit to begin with.</summary>
    public static OpenAnswer Starter(StarterRequest request) => new(StarterKit.Text, "");
}
