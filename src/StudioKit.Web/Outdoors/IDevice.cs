namespace StudioKit.Web.Outdoors;

/// <summary>What the page asks of the device it is held in.</summary>
public interface IDevice
{
    /// <summary>Keeps a short note on the device under a name; an empty one forgets it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="note">The note.</param>
    public Task KeepAsync(string name, string note);

    /// <summary>A note that was kept; empty where there is none.</summary>
    /// <param name="name">Its name.</param>
    public Task<string> KeptAsync(string name);

    /// <summary>Keeps the screen from going dark, or lets it again.</summary>
    /// <param name="awake">Whether it is to stay lit.</param>
    /// <returns>Whether the device does so.</returns>
    public Task<bool> StayAwakeAsync(bool awake);

    /// <summary>Calls for attention by a buzz, where the device can.</summary>
    public Task BuzzAsync();
}
