using System.Diagnostics.CodeAnalysis;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics.Sources;

namespace StudioKit.Kits.Description;

/// <summary>Reads one value with its uncertainty and bounds, and reports what is wrong with it.</summary>
internal static class ValueText
{
    public static bool TryRead<T>(ValueKind<T> kind, ValueBounds bounds, YamlNode node, string path, ReadContext context, [MaybeNullWhen(false)] out T value, bool mayBeList = false)
    {
        value = default;
        if (Scalar(kind, node, path, context) is not { } scalar)
        {
            return false;
        }

        var (text, _, spread) = kind.ReadMeasure is null ? (scalar.Text, null, null) : PlusMinus.Split(scalar.Text);
        var reading = kind.Read(text);
        value = reading.Value;
        if (!reading.IsGood)
        {
            var hint = mayBeList && text.Contains(',', StringComparison.Ordinal) ? $"Put several values between square brackets: '[{Excerpt.Short(text)}]'." : reading.Hint;
            Report(DiagnosticCodes.UnreadableValue, scalar, Excerpted(reading.Problem!, text), hint, context, HelpWith(kind));
            return false;
        }

        if (!bounds.Hold(kind, value))
        {
            Report(DiagnosticCodes.OutOfRange, scalar, $"'{Excerpt.Short(text)}' is out of range for '{Last(path)}'.", $"It may be {bounds}.", context);
            return false;
        }

        context.Written[path] = scalar.Text;
        NoteScene(kind, text, spread is null, path, context);
        return spread is null || TryNoteUncertainty(kind, bounds.Range(kind), spread, scalar, path, context);
    }

    private static ScalarNode? Scalar(ValueKind kind, YamlNode node, string path, ReadContext context)
    {
        if (node is ScalarNode { IsEmpty: false } scalar)
        {
            return scalar;
        }

        if (node is RefusedNode)
        {
            return null;
        }

        var found = node switch
        {
            ListNode => "a list",
            MapNode => "a section",
            _ => "nothing",
        };
        Report(DiagnosticCodes.WrongShape, node, $"'{Last(path)}' takes {kind.Noun}, not {found}.", $"Write for example '{Last(path)}: {kind.Example}'.", context);
        return null;
    }

    private static bool TryNoteUncertainty(ValueKind kind, double widest, string spread, ScalarNode scalar, string path, ReadContext context)
    {
        var reading = UncertaintyText.Read(kind, widest, spread);
        if (!reading.IsGood)
        {
            Report(DiagnosticCodes.UnreadableValue, scalar, Excerpted(reading.Problem!, spread), reading.Hint, context);
            return false;
        }

        context.Uncertainties[path] = reading.Value;
        return true;
    }

    // A place's light was looked up and not metered: what was taken for it is told like any value that nobody gave.
    private static void NoteScene(ValueKind kind, string text, bool isUnsure, string path, ReadContext context)
    {
        if (kind != Kinds.ExposureValue || text.Any(char.IsAsciiDigit) || SceneText.Find(text) is not { } scene)
        {
            return;
        }

        var spread = SceneText.Spread(scene);
        if (isUnsure)
        {
            context.Uncertainties[path] = spread;
        }

        context.Defaults.Add(new DefaultUsed(
            path, $"{Kinds.ExposureValue.Write(scene.Typical.AtIso100)}{(isUnsure ? $" ± {spread.Text}" : "")}, {scene.Scene}", $"Taken for the place: {Bibliography.Cite(scene.SourceKey, scene.SourceLocator)}"));
    }

    private static DiagnosticHelp HelpWith(ValueKind kind) => kind == Kinds.ExposureValue ? DiagnosticHelp.UsualLight : DiagnosticHelp.None;

    private static void Report(string code, YamlNode at, string message, string? hint, ReadContext context, DiagnosticHelp help = DiagnosticHelp.None) =>
        context.Diagnostics.Error(code, at, message, hint, help);

    private static string Excerpted(string problem, string text) =>
        text.Length == 0 ? problem : problem.Replace(text, Excerpt.Short(text), StringComparison.Ordinal);

    private static string Last(string path) => path[(path.LastIndexOf('.') + 1)..].Split('[')[0];
}
