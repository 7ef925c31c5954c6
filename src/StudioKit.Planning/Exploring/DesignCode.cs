using System.Globalization;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>A design by the options it takes, in the order of the choices.</summary>
/// <param name="Options">Place of the option taken of each choice, from 0 [1].</param>
public sealed record DesignCode(ValueList<int> Options)
{
    /// <summary>Its options counted from 1, e.g. <c>2-1-3</c>.</summary>
    public override string ToString() => string.Join('-', Options.Select(option => (option + 1).ToString(CultureInfo.InvariantCulture)));

    /// <summary>The design with another option of one choice.</summary>
    /// <param name="choice">Place of the choice, from 0 [1].</param>
    /// <param name="option">Place of the option, from 0 [1].</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice.</exception>
    public DesignCode With(int choice, int option)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(choice);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(choice, Options.Count);
        return new([.. Options.Select((now, place) => place == choice ? option : now)]);
    }

    /// <summary>Reads a design's options, e.g. <c>2-1-3</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="choices">The choices.</param>
    /// <returns>The design; none where the text is none of these choices.</returns>
    /// <exception cref="ArgumentNullException">There is no text or there are no choices.</exception>
    public static DesignCode? Read(string text, IReadOnlyList<DesignChoice> choices)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(choices);
        var places = text.Split('-').Select(piece => int.TryParse(piece, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place - 1 : -1).ToList();
        return places.Count == choices.Count && places.Zip(choices).All(of => of.First >= 0 && of.First < of.Second.Options.Count) ? new([.. places]) : null;
    }
}
