namespace StudioKit.Web.Storage;

/// <summary>The look of the page that was chosen on this device, by its name.</summary>
public interface ILooks
{
    /// <summary>The look in use.</summary>
    public Task<string> GetAsync();

    /// <summary>Changes the look, and remembers it.</summary>
    /// <param name="look">Its name.</param>
    public void Set(string look);
}
