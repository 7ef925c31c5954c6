using System.Security.Cryptography;
using System.Text;

namespace StudioKit.Field.Log;

/// <summary>Identifiers short enough to be read out, written on a lid and typed with cold fingers.</summary>
/// <remarks>
/// Letters and digits take turns, so that none reads as a word, and those that hands and eyes take for one another (0 and o, 1 and l, 2 and z, 5 and s)
/// are left out. The letters follow from the full identifier, so that the same record gets the same ones in another log, unless they are taken there.
/// </remarks>
public static class ShortId
{
    private const string Letters = "cdfhjkmnprtwx";
    private const string Digits = "2346789";
    private const int Shortest = 3;

    /// <summary>The short identifier of a record.</summary>
    /// <param name="identifier">Its full identifier.</param>
    /// <param name="isTaken">Whether another record of the log has a short identifier.</param>
    /// <returns>Three characters where they are free, else as many more as it needs.</returns>
    public static string Of(string identifier, Func<string, bool> isTaken)
    {
        ArgumentNullException.ThrowIfNull(identifier);
        ArgumentNullException.ThrowIfNull(isTaken);
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(identifier));
        var text = string.Concat(hash.Select((value, place) => (place % 2 == 0 ? Letters : Digits) is var signs ? signs[value % signs.Length] : ' '));
        for (var length = Shortest; length <= text.Length; length++)
        {
            if (!isTaken(text[..length]))
            {
                return text[..length];
            }
        }

        // Two identifiers with one hash are not met in practice; the chain ends all the same.
        return Of(identifier + "'", isTaken);
    }
}
