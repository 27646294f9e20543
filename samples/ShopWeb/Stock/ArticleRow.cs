namespace ShopWeb.Stock;

/// <summary>A kind of article of the invented stock, from which many are drawn.</summary>
/// <param name="Slots">Keys of the slots it goes to, with blanks between.</param>
/// <param name="Count">How many articles there are of it.</param>
/// <param name="Price">About what one costs, euros.</param>
/// <param name="Grams">About what one weighs.</param>
/// <param name="Name">Its name; {word} is what was drawn under that word.</param>
/// <param name="Text">Its short form; of {word:a|b} or {a|b} one is drawn, and behind a tilde stands how the name shows it.</param>
internal sealed record ArticleRow(string Slots, int Count, decimal Price, int Grams, string Name, string Text);
