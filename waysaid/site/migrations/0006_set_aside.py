from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0005_image_seconds'),
    ]

    operations = [
        migrations.AddField(
            model_name='talk',
            name='set_aside',
            field=models.JSONField(blank=True, default=list),
        ),
    ]
