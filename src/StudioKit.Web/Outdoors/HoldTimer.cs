using System.Globalization;

namespace StudioKit.Web.Outdoors;

/// <summary>How long the animal has been held. The moment it was taken is kept on the device, so that a reload or a lost tab does not stop the count.</summary>
/// <param name="clock">Tells the time.</param>
/// <param name="device">Keeps the moment.</param>
public sealed class HoldTimer(TimeProvider clock, IDevice device)
{
    private const string Note = "held";

    private DateTimeOffset _since;

    /// <summary>Name of the animal that is held; empty where none is.</summary>
    public string Animal { get; private set; } = "";

    /// <summary>Most time it may be held; zero where it is not to be held at all.</summary>
    public TimeSpan Limit { get; private set; }

    /// <summary>Whether an animal is held.</summary>
    public bool IsHolding => Animal.Length > 0;

    /// <summary>How long it has been held, in whole seconds; a clock set back counts as none.</summary>
    public TimeSpan Held => IsHolding ? TimeSpan.FromSeconds(Math.Max(0, Math.Floor((clock.GetUtcNow() - _since).TotalSeconds))) : TimeSpan.Zero;

    /// <summary>What is left of the time; negative once it is over.</summary>
    public TimeSpan Left => Limit - Held;

    /// <summary>Whether it must go home now.</summary>
    public bool IsOver => IsHolding && Left <= TimeSpan.Zero;

    /// <summary>Begins to count for an animal.</summary>
    /// <param name="animal">Its name.</param>
    /// <param name="limit">Most time it may be held.</param>
    public Task BeginAsync(string animal, TimeSpan limit)
    {
        (Animal, Limit, _since) = (animal, limit, clock.GetUtcNow());
        return device.KeepAsync(Note, string.Join('\t', _since.ToString("O", CultureInfo.InvariantCulture), limit.TotalSeconds.ToString(CultureInfo.InvariantCulture), animal));
    }

    /// <summary>The animal is home.</summary>
    public Task EndAsync()
    {
        (Animal, Limit) = ("", TimeSpan.Zero);
        return device.KeepAsync(Note, "");
    }

    /// <summary>Goes on counting where a page that was lost left off.</summary>
    public async Task ResumeAsync()
    {
        var parts = (await device.KeptAsync(Note)).Split('\t', 3);
        if (!IsHolding && parts.Length == 3
            && DateTimeOffset.TryParseExact(parts[0], "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var since)
            && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var limit) && limit is >= 0 and < 1e6)
        {
            (Animal, Limit, _since) = (parts[2], TimeSpan.FromSeconds(limit), since);
        }
    }
}
