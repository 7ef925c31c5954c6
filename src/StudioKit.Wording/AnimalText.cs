using System.Globalization;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Lengths of animals, to be held against a rule beside the animal: whole millimetres, under 10 mm halves, never more than there is.</summary>
internal static class AnimalText
{
    private const double Hair = 1e-6;

    public static string Millimetres(Length length)
    {
        var step = length.Millimeters < 10 ? 0.5 : 1;
        return (Math.Floor((length.Millimeters / step) + Hair) * step).ToString("0.#", CultureInfo.InvariantCulture);
    }

    public static string Range(Length over, Length upTo) => over > Length.Zero ? $"{Millimetres(over)} to {Millimetres(upTo)}" : $"up to {Millimetres(upTo)}";
}
