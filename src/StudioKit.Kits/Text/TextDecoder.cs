using System.Text;

namespace StudioKit.Kits.Text;

/// <summary>Turns bytes into text, or says why they are none.</summary>
internal static class TextDecoder
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Decodes UTF-8, with or without a byte-order mark.</summary>
    /// <returns>The text with plain line feeds; none where the bytes are too many or not text, which is then reported.</returns>
    public static SourceText? Decode(byte[] bytes, string file, int limit, DiagnosticList diagnostics)
    {
        var nothing = new SourceText(file, "");
        if (bytes.Length > limit)
        {
            diagnostics.Error(
                DiagnosticCodes.TooMuch, nothing, 1, 1, "The file is too large.", FormattableString.Invariant($"It may have at most {limit / 1000} kB."));
            return null;
        }

        try
        {
            return Check(new SourceText(file, Plain(Strict.GetString(bytes))), diagnostics);
        }
        catch (DecoderFallbackException)
        {
            diagnostics.Error(DiagnosticCodes.NotText, nothing, 1, 1, "The file is not UTF-8 text.", "Save it as UTF-8 from a text editor.");
            return null;
        }
    }

    /// <summary>Checks text that is in memory already.</summary>
    public static SourceText? Check(SourceText source, DiagnosticList diagnostics)
    {
        if (source.Text.Length > KitLimits.Bytes)
        {
            diagnostics.Error(
                DiagnosticCodes.TooMuch, source with { Text = "" }, 1, 1, "The file is too large.",
                FormattableString.Invariant($"It may have at most {KitLimits.Bytes / 1000} kB."));
            return null;
        }

        var at = FirstControlCharacter(source.Text);
        if (at < 0)
        {
            return source;
        }

        var line = source.Text.AsSpan(0, at).Count('\n') + 1;
        var column = at - source.Text.LastIndexOf('\n', at);
        diagnostics.Error(
            DiagnosticCodes.NotText, source, line, column,
            FormattableString.Invariant($"The file holds a control character (U+{(int)source.Text[at]:X4}), so it is no plain text."), "Write it in a text editor.");
        return null;
    }

    /// <summary>Drops the byte-order mark and carriage returns, so that a kit is the same kit whatever editor saved it.</summary>
    public static string Plain(string text) => (text.StartsWith('\uFEFF') ? text[1..] : text).ReplaceLineEndings("\n");

    private static int FirstControlCharacter(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is (< ' ' and not ('\n' or '\t')) or '\u007F' or '\uFFFE' or '\uFFFF')
            {
                return i;
            }
        }

        return -1;
    }
}
