namespace StudioKit.Web.Storage;

/// <summary>Pictures that the visitor picks; their files go from the browser to the worker and nowhere else.</summary>
public interface IPicturePicker
{
    /// <summary>Watches the file inputs inside an element of the page, and what is dropped on it.</summary>
    /// <param name="place">The element's id.</param>
    /// <param name="picked">Told key and file name of each picture.</param>
    public Task WatchAsync(string place, Action<string, string> picked);

    /// <summary>Lets go of a picture.</summary>
    /// <param name="key">Its key.</param>
    public Task ForgetAsync(string key);

    /// <summary>Paints the map of a picture that was read.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="key">Key of the picture.</param>
    /// <param name="width">Points across.</param>
    /// <param name="height">Points down.</param>
    public Task PaintAsync(string canvas, string key, int width, int height);

    /// <summary>Hands a text to the visitor as a file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">The text.</param>
    public Task SaveTextAsync(string name, string text);
}
