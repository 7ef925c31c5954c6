using System.CommandLine;
using System.Globalization;

namespace StudioKit.Cli.Records;

/// <summary>Options whose values are numbers with a point; a comma is refused, as it would pass for a mark between thousands and put a place ten times as far off.</summary>
internal static class NumberOption
{
    public static Option<double?> Create(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "number",
        CustomParser = result =>
        {
            var written = string.Join(' ', result.Tokens.Select(token => token.Value));
            if (double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
            {
                return number;
            }

            result.AddError(HasDecimalComma(written)
                ? $"{name}: '{written}' has a comma; write {written.Replace(',', '.')}."
                : $"{name}: '{written}' is not a number; write for example 52.612 or -21.543.");
            return null;
        },
    };

    /// <summary>Whether a text is a number but for its comma.</summary>
    public static bool HasDecimalComma(string text) =>
        text.Count(sign => sign == ',') == 1 && !text.Contains('.', StringComparison.Ordinal)
        && double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
