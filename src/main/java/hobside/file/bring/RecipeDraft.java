package hobside.file.bring;
public record RecipeDraft(hobside.dish.Demo demo) {}
